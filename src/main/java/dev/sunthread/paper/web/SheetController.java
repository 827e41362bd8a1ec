package dev.sunthread.paper.web;

import dev.sunthread.access.Callers;
import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.kernel.Refused;
import dev.sunthread.paper.Fate;
import dev.sunthread.paper.PrintedSheets;
import dev.sunthread.paper.Sheet;
import dev.sunthread.paper.Sheets;
import dev.sunthread.paper.form.Forms;
import jakarta.validation.Valid;
import java.util.Locale;
import java.util.UUID;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** One sheet: to print, and what became of its records. */
@Controller
class SheetController {

    private final PrintedSheets printed;
    private final Sheets sheets;
    private final Forms forms;
    private final PrintedForm pdf;
    private final Callers callers;

    SheetController(PrintedSheets printed, Sheets sheets, Forms forms, PrintedForm pdf, Callers callers) {
        this.printed = printed;
        this.sheets = sheets;
        this.forms = forms;
        this.pdf = pdf;
        this.callers = callers;
    }

    @GetMapping("/forms/sheet")
    String sheet(@RequestParam String code, Model model) {
        model.addAttribute("form", new VoidForm(code, "void-" + UUID.randomUUID(), null, null, null));
        return show(code, model);
    }

    @GetMapping("/forms/sheet.pdf")
    ResponseEntity<byte[]> pdf(@RequestParam String code, Locale locale) {
        Sheet sheet = named(code);
        return ResponseEntity.ok().contentType(MediaType.APPLICATION_PDF).body(pdf.of(sheet, forms.of(sheet)));
    }

    /** Says of records that they will not be entered. */
    @PostMapping("/forms/sheet")
    @Needs(Right.WORK)
    String giveUp(@Valid @ModelAttribute("form") VoidForm form, BindingResult problems, Model model) {
        if (!problems.hasErrors()) {
            try {
                sheets.giveUp(
                        form.id(),
                        form.chosen(),
                        form.reason(),
                        form.stripped(),
                        callers.signedIn().mark());
                return "redirect:/forms/sheet?code=" + named(form.code()).code();
            } catch (Refused e) {
                model.addAttribute("refused", e);
            }
        }
        return show(String.valueOf(form.code()), model);
    }

    private String show(String code, Model model) {
        Sheet sheet = named(code);
        model.addAttribute("sheet", sheet);
        model.addAttribute("records", printed.records(sheet.code()));
        model.addAttribute("fates", Fate.values());
        return "paper/sheet";
    }

    private Sheet named(String code) {
        return printed.sheet(code.strip().toUpperCase(Locale.ROOT))
                .orElseThrow(
                        () -> new Refused(
                                "No sheet " + code + " is recorded here, or its printing was taken back",
                                "Choose one of the list; a record of a sheet that is not known can still be entered by its id"));
    }
}
