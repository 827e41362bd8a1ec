package dev.sunthread.web.compare;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.genealogy.AnswerHead;
import dev.sunthread.genealogy.TraceProgress;
import dev.sunthread.genealogy.Traces;
import dev.sunthread.kernel.Busy;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.body.Unreadable;
import dev.sunthread.web.PageAddress;
import jakarta.servlet.http.HttpServletResponse;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.validation.BindingResult;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Answers of several questions joined: what is in all of them, and what is in one but not in the others. */
@Controller
class JoinedController {

    private final Joining joining;
    private final AnswerDifferences kept;

    JoinedController(Joining joining, AnswerDifferences kept) {
        this.joining = joining;
        this.kept = kept;
    }

    @GetMapping("/compare/joined")
    String joined(
            @ModelAttribute("asked") JoinedRequest asked,
            BindingResult problems,
            @ModelAttribute("added") AddedQuestion added,
            BindingResult addedProblems,
            Model model,
            @ModelAttribute(name = "self", binding = false) PageAddress self,
            @RequestParam(required = false) @Nullable String format,
            HttpServletResponse response) {
        try {
            refuse(problems, model);
            if (added.isOfKept() || added.isTyped()) {
                return "redirect:" + grown(asked, added);
            }
            if (asked.isAsked() && !problems.hasErrors()) {
                // a file has no page that could say how far it is
                Optional<TraceProgress> making = format == null ? joining.making(asked) : Optional.empty();
                if (making.isPresent()) {
                    return waiting(making.get(), model, self, response);
                }
                join(asked, model, self);
            }
        } catch (Busy e) {
            throw e;
        } catch (Refused e) {
            model.addAttribute("refused", e);
        }
        return "web/compare-joined";
    }

    /** Waits no longer for answers that are being made; the questions stay in the form. */
    @PostMapping("/compare/joined/stop")
    @Needs(Right.LOOK_UP)
    String stop(@ModelAttribute("asked") JoinedRequest asked, Model model) {
        joining.stop(asked);
        model.addAttribute("stopped", true);
        return "web/compare-joined";
    }

    private static void refuse(BindingResult problems, Model model) {
        problems.getFieldErrors().stream().findFirst().ifPresent(error -> {
            model.addAttribute("asked", JoinedRequest.NONE);
            throw Unreadable.at(
                    error.getField(), "can not be \"" + error.getRejectedValue() + "\"", "Correct it or leave it out");
        });
    }

    private static String waiting(TraceProgress making, Model model, PageAddress self, HttpServletResponse response) {
        String again = self.with("cutoff", making.cutoff()).toString();
        model.addAttribute("making", making);
        model.addAttribute("again", again);
        response.setHeader("Refresh", Traces.COME_AGAIN.toSeconds() + "; url=" + again);
        return "web/compare-making";
    }

    private void join(JoinedRequest asked, Model model, PageAddress self) {
        List<AnswerHead> heads = joining.ask(asked);
        JoinedAnswer joined = joining.join(asked, heads);
        model.addAttribute("joined", joined);
        model.addAttribute("join", asked.joined().name().toLowerCase(Locale.ROOT));
        model.addAttribute("cutoff", joined.cutoff());
        model.addAttribute("answeredAt", joined.cutoff());
        model.addAttribute("json", new JoinedAddress(asked, joined.cutoff()).json());
        model.addAttribute("since", joining.since(heads));
        model.addAttribute("again", self.with("cutoff", null).with("page", null));
        model.addAttribute("tables", List.of(joining.table(asked, heads)));
    }

    private PageAddress grown(JoinedRequest asked, AddedQuestion added) {
        PageAddress whole = new PageAddress("/compare/joined", Map.of());
        if (added.isOfKept()) {
            String of = JoinedQuestions.with(
                    null, JoinedQuestions.kept(find(added.left()).asked()));
            KeptAnswer right = find(added.right());
            whole = whole.with("of", JoinedQuestions.with(of, JoinedQuestions.kept(right.asked())))
                    .with("cutoff", Math.max(find(added.left()).cutoff(), right.cutoff()));
        } else {
            whole = whole.with("of", JoinedQuestions.with(asked.of(), added.typed()))
                    .with("cutoff", asked.cutoff());
        }
        return whole.with("join", asked.joined().name().toLowerCase(Locale.ROOT));
    }

    private KeptAnswer find(@Nullable String name) {
        return kept.named(String.valueOf(name));
    }
}
