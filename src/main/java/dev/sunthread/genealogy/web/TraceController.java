package dev.sunthread.genealogy.web;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.genealogy.AnswerHead;
import dev.sunthread.genealogy.LinePage;
import dev.sunthread.genealogy.TraceFlows;
import dev.sunthread.genealogy.Traces;
import dev.sunthread.kernel.Busy;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.body.Unreadable;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** The trace page: asks a question, shows the counts of its answer and a page of its lines. */
@Controller
class TraceController {

    static final int LINES_A_PAGE = 50;
    private static final int MOST_PLACES = 200;

    private final Traces traces;
    private final TraceFlows flows;
    private final TraceTurn turn;

    TraceController(Traces traces, TraceFlows flows, TraceTurn turn) {
        this.traces = traces;
        this.flows = flows;
        this.turn = turn;
    }

    @GetMapping("/trace")
    String trace(
            @ModelAttribute("asked") @Nullable TraceRequest asked,
            BindingResult askedProblems,
            @ModelAttribute("choice") LineChoice choice,
            BindingResult choiceProblems,
            Model model) {
        try {
            refuse(askedProblems);
            refuse(choiceProblems);
            if (asked != null && asked.isAsked()) {
                answer(asked, choice, model);
            }
        } catch (Busy e) {
            throw e;
        } catch (Refused e) {
            model.addAttribute("refused", e);
            model.addAttribute("asked", asked == null ? TraceRequest.NONE : asked);
            model.addAttribute("instead", asked == null ? null : JoinedOffer.page(asked, asked.cutoff()));
        }
        if (model.containsAttribute("making")) {
            return TraceTurn.VIEW;
        }
        return model.containsAttribute("page") ? "genealogy/trace" : "genealogy/ask";
    }

    /** Waits no longer for an answer that is being made; the question stays in the form. */
    @PostMapping("/trace/stop")
    @Needs(Right.LOOK_UP)
    String stop(@RequestParam String making, @ModelAttribute("asked") TraceRequest asked, Model model) {
        turn.stop(making);
        model.addAttribute("stopped", true);
        return "genealogy/ask";
    }

    private void answer(TraceRequest asked, LineChoice choice, Model model) {
        turn.answer(asked, choice, model).ifPresent(head -> show(head, asked, choice, model));
    }

    private void show(AnswerHead head, TraceRequest asked, LineChoice choice, Model model) {
        LinePage lines = traces.lines(head.id(), choice.filter(), choice.index(), LINES_A_PAGE);
        model.addAttribute("cutoff", head.question().cutoff());
        model.addAttribute("answeredAt", head.question().cutoff());
        model.addAttribute("since", traces.since(head));
        model.addAttribute("instead", JoinedOffer.page(asked, head.question().cutoff()));
        model.addAttribute("tables", List.of(TraceTable.of(traces, head, choice.filter())));
        model.addAttribute(
                "page", TracePage.of(head, asked, choice, lines, flows.of(head), flows.places(head, MOST_PLACES)));
    }

    private static void refuse(BindingResult problems) {
        problems.getFieldErrors().stream().findFirst().ifPresent(error -> {
            throw Unreadable.at(
                    error.getField(), "can not be \"" + error.getRejectedValue() + "\"", "Correct it or leave it out");
        });
    }
}
