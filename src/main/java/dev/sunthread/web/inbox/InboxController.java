package dev.sunthread.web.inbox;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.genealogy.Traces;
import dev.sunthread.inbox.Lines;
import dev.sunthread.inbox.OpenLine;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.web.Done;
import jakarta.validation.Valid;
import java.io.IOException;
import java.util.List;
import java.util.UUID;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** The inbox: lines that could not be accepted, each mended and sent again or settled with a reason. */
@Controller
class InboxController {

    private static final String BACK = "redirect:/inbox";

    private final Sealer sealer;
    private final Lines lines;
    private final LineLists lists;
    private final Mending mending;
    private final Settlements settlements;
    private final Traces traces;

    InboxController(
            Sealer sealer, Lines lines, LineLists lists, Mending mending, Settlements settlements, Traces traces) {
        this.sealer = sealer;
        this.lines = lines;
        this.lists = lists;
        this.mending = mending;
        this.settlements = settlements;
        this.traces = traces;
    }

    @GetMapping("/inbox")
    String inbox(LineChoice choice, Model model) {
        if (choice.answer() != null) {
            // an answer that is kept no longer names no lines, which is not the same as none
            traces.head(choice.answer());
        }
        long cutoff = sealer.seal();
        model.addAttribute("cutoff", cutoff);
        model.addAttribute("choice", choice);
        model.addAttribute("lines", lists.open(choice, cutoff));
        model.addAttribute("tables", List.of(lists.table(choice, cutoff)));
        return "web/inbox";
    }

    @GetMapping("/inbox/line")
    String line(@RequestParam String id, Model model) {
        OpenLine line = show(id, model);
        model.addAttribute("mend", new MendForm(id, newId(), line.text(), null));
        model.addAttribute("nothing", new NothingForm(id, newId(), null));
        return "web/line";
    }

    @PostMapping("/inbox/line")
    @Needs(Right.JUDGE)
    String mend(
            @Valid @ModelAttribute("mend") MendForm form, BindingResult problems, Model model, RedirectAttributes told)
            throws IOException {
        if (!problems.hasErrors()) {
            try {
                told.addFlashAttribute("done", new Done("inbox.mended", mending.mend(form)));
                return BACK;
            } catch (Refused e) {
                model.addAttribute("refused", e);
            }
        }
        show(form.line(), model);
        model.addAttribute("nothing", new NothingForm(form.line(), newId(), null));
        return "web/line";
    }

    @PostMapping("/inbox/nothing")
    @Needs(Right.JUDGE)
    String tellsNothing(
            @Valid @ModelAttribute("nothing") NothingForm form,
            BindingResult problems,
            Model model,
            RedirectAttributes told) {
        OpenLine line = show(form.line(), model);
        if (problems.hasErrors()) {
            model.addAttribute("mend", new MendForm(form.line(), newId(), line.text(), null));
            return "web/line";
        }
        settlements.settleLine(form.line(), null, form.id(), form.reason());
        told.addFlashAttribute("done", new Done("inbox.nothing-settled", null));
        return BACK;
    }

    private OpenLine show(String id, Model model) {
        long cutoff = sealer.seal();
        // a form that says no line binds nothing to it
        OpenLine line = lines.open(String.valueOf(id), cutoff);
        model.addAttribute("cutoff", cutoff);
        model.addAttribute("line", line);
        return line;
    }

    private static String newId() {
        return "settled-" + UUID.randomUUID();
    }
}
