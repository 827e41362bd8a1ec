package dev.sunthread.paper.web;

import dev.sunthread.access.Callers;
import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.kernel.Refused;
import dev.sunthread.paper.Sheets;
import jakarta.validation.Valid;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;

/** What was printed, and printing more. */
@Controller
class FormListController {

    private final RecordPages pages;
    private final Sheets sheets;
    private final FormChoices choices;
    private final Callers callers;

    FormListController(RecordPages pages, Sheets sheets, FormChoices choices, Callers callers) {
        this.pages = pages;
        this.sheets = sheets;
        this.choices = choices;
        this.callers = callers;
    }

    @GetMapping("/forms")
    String forms(Model model) {
        return pages.list(model);
    }

    /** Asks for the station first, then for what may be done there. */
    @GetMapping("/forms/new")
    @Needs(Right.WORK)
    String ask(@ModelAttribute("form") PrintForm form, Model model) {
        choices.show(form, model);
        return "paper/new";
    }

    @PostMapping("/forms/new")
    @Needs(Right.WORK)
    String print(@Valid @ModelAttribute("form") PrintForm form, BindingResult problems, Model model) {
        if (!problems.hasErrors()) {
            try {
                String code = sheets.print(
                        choices.form(form), form.howMany(), callers.signedIn().mark());
                return "redirect:/forms/sheet?code=" + code;
            } catch (Refused e) {
                model.addAttribute("refused", e);
            }
        }
        choices.show(form, model);
        return "paper/new";
    }
}
