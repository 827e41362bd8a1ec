package dev.sunthread.genealogy.web;

import dev.sunthread.genealogy.ProposedWindow;
import dev.sunthread.genealogy.WindowProposals;
import dev.sunthread.kernel.Refused;
import java.time.ZoneId;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;

/** The page on which the records propose from when to when something is suspect. */
@Controller
class WindowController {

    private final WindowProposals windows;
    private final ZoneId zone;

    WindowController(WindowProposals windows, ZoneId zone) {
        this.windows = windows;
        this.zone = zone;
    }

    @GetMapping("/trace/window")
    String window(@ModelAttribute("asked") @Nullable WindowRequest asked, Model model) {
        WindowRequest given = asked == null ? WindowRequest.NONE : asked;
        model.addAttribute("asked", given);
        if (given.isAsked()) {
            try {
                ProposedWindow proposed = given.proposed(windows, zone);
                model.addAttribute("proposed", proposed);
                model.addAttribute("scope", ScopeText.write(given.scope(proposed.window())));
            } catch (Refused e) {
                model.addAttribute("refused", e);
            }
        }
        return "genealogy/window";
    }
}
