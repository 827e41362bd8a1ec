package dev.sunthread.genealogy.web;

import static dev.sunthread.kernel.Table.column;

import dev.sunthread.genealogy.AnswerHead;
import dev.sunthread.genealogy.TraceFlows;
import dev.sunthread.genealogy.Traces;
import dev.sunthread.kernel.Busy;
import dev.sunthread.kernel.Refused;
import dev.sunthread.kernel.Table;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;

/** The flow of an answer as a page of its own, at the parameters of the trace page. */
@Controller
class FlowController {

    private final Traces traces;
    private final TraceFlows flows;
    private final TraceTurn turn;

    FlowController(Traces traces, TraceFlows flows, TraceTurn turn) {
        this.traces = traces;
        this.flows = flows;
        this.turn = turn;
    }

    @GetMapping("/trace/flow")
    String flow(@ModelAttribute("asked") @Nullable TraceRequest asked, BindingResult problems, Model model) {
        TraceRequest request = asked == null ? TraceRequest.NONE : asked;
        if (!request.isAsked() || problems.hasErrors()) {
            return "redirect:/trace";
        }
        try {
            return turn.answer(request, LineChoice.ALL, model)
                    .map(head -> show(head, request, model))
                    .orElse(TraceTurn.VIEW);
        } catch (Busy e) {
            throw e;
        } catch (Refused e) {
            model.addAttribute("refused", e);
            return "genealogy/ask";
        }
    }

    private String show(AnswerHead head, TraceRequest request, Model model) {
        TraceAddress address = TraceAddress.of(head, request);
        FlowPicture picture = FlowPicture.of(head, flows.of(head), address);
        model.addAttribute("cutoff", head.question().cutoff());
        model.addAttribute("answeredAt", head.question().cutoff());
        model.addAttribute("since", traces.since(head));
        model.addAttribute("again", address.flowAgain());
        model.addAttribute("head", head);
        model.addAttribute("flow", picture);
        model.addAttribute("data", address.flowJson());
        model.addAttribute("lines", address.page(LineChoice.ALL));
        model.addAttribute("tables", List.of(table(picture)));
        return "genealogy/flow";
    }

    private static Table<FlowPicture.Link> table(FlowPicture picture) {
        return Table.listed(
                "flow",
                picture::links,
                column("column.from", link -> link.from().name()),
                column("column.class", link -> link.from().certainty()),
                column("column.to-there", link -> link.to().name()),
                column("column.class-there", link -> link.to().certainty()),
                column("column.things", FlowPicture.Link::count));
    }
}
