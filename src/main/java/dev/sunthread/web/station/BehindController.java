package dev.sunthread.web.station;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.quality.StationsBehind;
import dev.sunthread.web.Done;
import dev.sunthread.web.PageDoor;
import jakarta.validation.Valid;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Objects;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Stations that are behind: a person says so of one, and that it has caught up. */
@Controller
class BehindController {

    private static final String AGAIN = "redirect:/stations/behind";

    private final StationsBehind behind;
    private final StationContacts stations;
    private final Sealer sealer;
    private final PageDoor door;
    private final ZoneId zone;

    BehindController(StationsBehind behind, StationContacts stations, Sealer sealer, PageDoor door, ZoneId zone) {
        this.behind = behind;
        this.stations = stations;
        this.sealer = sealer;
        this.door = door;
        this.zone = zone;
    }

    @GetMapping("/stations/behind")
    String behind(Model model) {
        return show(model);
    }

    @PostMapping("/stations/behind")
    @Needs(Right.WORK)
    String isBehind(
            @Valid @ModelAttribute("form") BehindForm form,
            BindingResult problems,
            Model model,
            RedirectAttributes told) {
        if (problems.hasErrors()) {
            return show(model);
        }
        ObjectNode body = JsonNodeFactory.instance.objectNode();
        body.put("station", form.station());
        body.put(
                "since",
                DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(
                        Objects.requireNonNull(form.since()).atZone(zone)));
        body.put("why", PageDoor.line(form.why()));
        return said(form.id(), "station-behind", body, "behind.is-told", model, told);
    }

    @PostMapping("/stations/caught-up")
    @Needs(Right.WORK)
    String caughtUp(
            @Valid @ModelAttribute("caughtUp") CaughtUpForm form,
            BindingResult problems,
            Model model,
            RedirectAttributes told) {
        if (problems.hasErrors()) {
            return show(model);
        }
        ObjectNode body = JsonNodeFactory.instance.objectNode();
        body.put("entry", form.entry());
        body.put("why", PageDoor.line(form.why()));
        return said(form.id(), "station-caught-up", body, "behind.caught-up-is-told", model, told);
    }

    private String said(String id, String kind, ObjectNode body, String done, Model model, RedirectAttributes told) {
        try {
            door.say(id, kind, body);
            told.addFlashAttribute("done", new Done(done, null));
            return AGAIN;
        } catch (Refused e) {
            model.addAttribute("refused", e);
            return show(model);
        }
    }

    private String show(Model model) {
        long cutoff = sealer.seal();
        model.addAttribute("cutoff", cutoff);
        model.addAttribute("behind", behind.at(cutoff));
        model.addAttribute("stations", stations.oldestFirst(cutoff));
        model.addAttribute("id", UUID.randomUUID().toString());
        return "web/behind";
    }
}
