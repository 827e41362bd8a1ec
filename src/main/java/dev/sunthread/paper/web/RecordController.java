package dev.sunthread.paper.web;

import dev.sunthread.access.Callers;
import dev.sunthread.access.Needs;
import dev.sunthread.access.PersonMarks;
import dev.sunthread.access.Right;
import dev.sunthread.kernel.Refused;
import dev.sunthread.paper.RecordId;
import dev.sunthread.paper.entry.Doubt;
import dev.sunthread.paper.entry.Doubts;
import dev.sunthread.paper.entry.Entered;
import dev.sunthread.paper.entry.Filled;
import dev.sunthread.paper.entry.PaperEntries;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** One record on paper: the same fields as there, to be entered once. */
@Controller
class RecordController {

    private final RecordPages pages;
    private final Doubts doubts;
    private final PaperEntries entries;
    private final PersonMarks marks;
    private final Callers callers;

    RecordController(RecordPages pages, Doubts doubts, PaperEntries entries, PersonMarks marks, Callers callers) {
        this.pages = pages;
        this.doubts = doubts;
        this.entries = entries;
        this.marks = marks;
        this.callers = callers;
    }

    /**
     * Shows a record; of a sheet that is not known here it asks first what stands in its heading.
     *
     * @param again whether it is to be entered though it was before
     */
    @GetMapping("/forms/record")
    String record(
            @RequestParam String id,
            @ModelAttribute("chosen") PrintForm chosen,
            @RequestParam(defaultValue = "false") boolean again,
            Model model) {
        try {
            RecordId read = RecordId.read(id);
            return pages.show(read, chosen, pages.empty(), again, model);
        } catch (Refused e) {
            model.addAttribute("refused", e);
            return pages.list(model);
        }
    }

    /** Enters a record; what is odd about it is shown once before. */
    @PostMapping("/forms/record")
    @Needs(Right.WORK)
    String enter(
            @RequestParam String id,
            @ModelAttribute("chosen") PrintForm chosen,
            @RequestParam Map<String, String> fields,
            Model model) {
        RecordId read = RecordId.read(id);
        RecordForm sent = RecordForm.sent(fields);
        Filled filled = sent.filled(read, marks);
        var form = pages.form(read, chosen);
        List<Doubt> odd = doubts.about(form.form(), filled, form.printedAt());
        if (!odd.isEmpty() && !sent.sure()) {
            model.addAttribute(
                    "doubts",
                    odd.stream().collect(Collectors.groupingBy(Doubt::box, LinkedHashMap::new, Collectors.toList())));
            return pages.show(read, chosen, sent, true, model);
        }
        Entered entered = entries.enter(form.form(), filled, callers.signedIn().mark());
        model.addAttribute("entered", entered);
        return pages.done(read, model);
    }
}
