package dev.sunthread.web.inbox;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.inbox.Lines;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.web.Done;
import jakarta.validation.Valid;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Settles all lines of one file that wait at once, such as of a file that was sent by mistake. */
@Controller
class FileController {

    private final Lines lines;
    private final Sealer sealer;
    private final FileSettlement settlement;

    FileController(Lines lines, Sealer sealer, FileSettlement settlement) {
        this.lines = lines;
        this.sealer = sealer;
        this.settlement = settlement;
    }

    @GetMapping("/inbox/file")
    String ask(@RequestParam String name, Model model) {
        long cutoff = sealer.seal();
        model.addAttribute("form", new FileForm(name, cutoff, "file-" + UUID.randomUUID(), null));
        return show(name, cutoff, model);
    }

    @PostMapping("/inbox/file")
    @Needs(Right.JUDGE)
    String settle(
            @Valid @ModelAttribute("form") FileForm form,
            BindingResult problems,
            Model model,
            RedirectAttributes told) {
        if (problems.hasErrors()) {
            return show(form.file(), form.cutoff(), model);
        }
        told.addFlashAttribute("done", new Done("inbox.file-settled", String.valueOf(settlement.settle(form))));
        return "redirect:/inbox";
    }

    private String show(String file, long cutoff, Model model) {
        model.addAttribute("cutoff", cutoff);
        model.addAttribute("file", file);
        model.addAttribute("count", lines.countOfFile(file, cutoff));
        model.addAttribute("naming", lines.countOfFileThatName(file, cutoff));
        return "web/line-file";
    }
}
