package dev.sunthread.web.inbox;

import static dev.sunthread.kernel.Table.column;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.genealogy.Traces;
import dev.sunthread.kernel.Refused;
import dev.sunthread.kernel.RuleBroken;
import dev.sunthread.kernel.Table;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.web.Done;
import dev.sunthread.web.Paged;
import jakarta.validation.Valid;
import java.util.List;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Open findings, each settled by a person with what was found out and done. */
@Controller
class FindingController {

    private static final int A_PAGE = 100;

    private final Sealer sealer;
    private final FindingPages pages;
    private final Settlements settlements;
    private final Traces traces;

    FindingController(Sealer sealer, FindingPages pages, Settlements settlements, Traces traces) {
        this.sealer = sealer;
        this.pages = pages;
        this.settlements = settlements;
        this.traces = traces;
    }

    @GetMapping("/findings")
    String findings(FindingChoice choice, Model model) {
        if (choice.answer() != null) {
            // an answer that is kept no longer names no findings, which is not the same as none
            traces.head(choice.answer());
        }
        show(choice, model);
        return "web/findings";
    }

    @PostMapping("/findings")
    @Needs(Right.JUDGE)
    String settle(
            @Valid @ModelAttribute("form") FindingForm form,
            BindingResult problems,
            Model model,
            RedirectAttributes told) {
        if (!problems.hasErrors()) {
            try {
                settlements.settle(form);
                told.addFlashAttribute("done", new Done("findings.settled", null));
                return "redirect:/findings";
            } catch (Refused e) {
                model.addAttribute("refused", e);
                // what somebody else settled meanwhile has no row any more, beside which it could be said
                model.addAttribute("settledBefore", e instanceof RuleBroken);
            }
        }
        show(FindingChoice.of(form.entry()), model);
        return "web/findings";
    }

    private void show(FindingChoice choice, Model model) {
        long cutoff = sealer.seal();
        model.addAttribute("cutoff", cutoff);
        model.addAttribute("choice", choice);
        model.addAttribute(
                "rows",
                Paged.of(
                        choice.page(),
                        A_PAGE,
                        pages.count(choice, cutoff),
                        (offset, most) -> pages.open(choice, cutoff, offset, most)));
        model.addAttribute("tables", List.of(table(choice, cutoff)));
    }

    private Table<FindingRow> table(FindingChoice choice, long cutoff) {
        return Table.listed(
                "findings",
                () -> pages.open(choice, cutoff, 0, Integer.MAX_VALUE),
                column("column.occurred", row -> row.finding().occurredAt()),
                column("column.wrong", row -> row.finding().sentence()),
                column("column.what-to-do", row -> row.finding().remedy()),
                column(
                        "column.touches",
                        row -> row.subjects().stream()
                                .map(FindingSubject::words)
                                .toList()),
                column("column.raised-by-entry", row -> row.finding().entry()),
                column("column.number-there", row -> row.finding().ordinal()),
                column("column.from-source", row -> row.finding().source()));
    }
}
