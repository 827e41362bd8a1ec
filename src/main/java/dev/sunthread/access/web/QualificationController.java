package dev.sunthread.access.web;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Qualifications;
import dev.sunthread.access.Right;
import dev.sunthread.access.Words;
import dev.sunthread.kernel.Refused;
import java.time.Clock;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import org.springframework.format.annotation.DateTimeFormat;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Gives persons qualifications for operations, and takes them back. */
@Controller
@RequestMapping("/person/qualifications")
@Needs(Right.ADMINISTER)
class QualificationController {

    private final Qualifications qualifications;
    private final Words words;
    private final ZoneId zone;
    private final Clock clock;

    QualificationController(Qualifications qualifications, Words words, ZoneId zone, Clock clock) {
        this.qualifications = qualifications;
        this.words = words;
        this.zone = zone;
        this.clock = clock;
    }

    /**
     * What is filled in.
     *
     * @param until the last day it holds, in the plant's zone
     */
    record Form(
            String mark,
            @Nullable String operation,
            @Nullable String evidence,

            @DateTimeFormat(iso = DateTimeFormat.ISO.DATE) @Nullable
            LocalDate until) {}

    @PostMapping
    String give(Form form, RedirectAttributes told) {
        told.addAttribute("mark", form.mark());
        try {
            qualifications.give(form.mark(), said(form.operation()), said(form.evidence()), end(form.until()));
        } catch (Refused e) {
            told.addFlashAttribute("refused", e);
        }
        return "redirect:/person";
    }

    @PostMapping("/withdrawn")
    String withdraw(@RequestParam String mark, @RequestParam long id, RedirectAttributes told) {
        told.addAttribute("mark", mark);
        qualifications.withdraw(mark, id);
        return "redirect:/person";
    }

    private String said(@Nullable String text) {
        if (text == null || text.isBlank()) {
            throw words.refused("qualification-words");
        }
        return text.strip();
    }

    private @Nullable OffsetDateTime end(@Nullable LocalDate lastDay) {
        if (lastDay == null) {
            return null;
        }
        OffsetDateTime end = lastDay.plusDays(1).atStartOfDay(zone).toOffsetDateTime();
        if (end.isBefore(OffsetDateTime.now(clock))) {
            throw words.refused("qualification-over");
        }
        return end;
    }
}
