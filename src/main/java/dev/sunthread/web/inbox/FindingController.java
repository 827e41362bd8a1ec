package dev.sunthread.web.inbox;

import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Sealer;
import jakarta.validation.Valid;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Open findings, each settled by a person with what was found out and done. */
@Controller
class FindingController {

    private final Sealer sealer;
    private final FindingPages pages;
    private final Settlements settlements;

    FindingController(Sealer sealer, FindingPages pages, Settlements settlements) {
        this.sealer = sealer;
        this.pages = pages;
        this.settlements = settlements;
    }

    @GetMapping("/findings")
    String findings(@RequestParam(required = false) @Nullable String entry, Model model) {
        show(entry, model);
        return "web/findings";
    }

    @PostMapping("/findings")
    String settle(
            @Valid @ModelAttribute("form") FindingForm form,
            BindingResult problems,
            Model model,
            RedirectAttributes told) {
        if (!problems.hasErrors()) {
            try {
                settlements.settle(form);
                told.addFlashAttribute("done", "The finding is settled");
                return "redirect:/findings";
            } catch (Refused e) {
                model.addAttribute("refused", e);
            }
        }
        show(form.entry(), model);
        return "web/findings";
    }

    private void show(@Nullable String entry, Model model) {
        long cutoff = sealer.seal();
        model.addAttribute("cutoff", cutoff);
        model.addAttribute("only", entry);
        model.addAttribute("total", pages.count(cutoff));
        model.addAttribute("rows", pages.open(entry, cutoff));
    }
}
