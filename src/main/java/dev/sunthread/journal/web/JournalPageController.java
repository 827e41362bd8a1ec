package dev.sunthread.journal.web;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Entries;
import dev.sunthread.ledger.Sealer;
import java.io.IOException;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The journal page: takes files in, gives everything out, and restores while nothing is recorded. */
@Controller
class JournalPageController {

    private static final String BACK = "redirect:/journal";

    private final Uploads uploads;
    private final Entries entries;
    private final Sealer sealer;

    JournalPageController(Uploads uploads, Entries entries, Sealer sealer) {
        this.uploads = uploads;
        this.entries = entries;
        this.sealer = sealer;
    }

    @GetMapping("/journal")
    String journal(Model model) {
        model.addAttribute("cutoff", sealer.seal());
        model.addAttribute("isEmpty", entries.none());
        return "journal/journal";
    }

    @PostMapping("/journal")
    @Needs(Right.IMPORT)
    String takeIn(Upload upload, RedirectAttributes told) throws IOException {
        try {
            told.addFlashAttribute("report", uploads.takeIn(upload));
        } catch (Refused e) {
            told.addFlashAttribute("refused", e);
        }
        return BACK;
    }

    @PostMapping("/journal/restore")
    @Needs(Right.RESTORE)
    String restore(Upload upload, RedirectAttributes told) throws IOException {
        try {
            told.addFlashAttribute("restored", uploads.restore(upload));
        } catch (Refused e) {
            told.addFlashAttribute("refused", e);
        }
        return BACK;
    }
}
