package dev.sunthread.genealogy.web;

import dev.sunthread.genealogy.AnswerHead;
import dev.sunthread.genealogy.TraceLimits;
import dev.sunthread.genealogy.TraceProgress;
import dev.sunthread.genealogy.TraceQuestion;
import dev.sunthread.genealogy.Traced;
import dev.sunthread.genealogy.Traces;
import dev.sunthread.kernel.Recorder;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.ZoneId;
import java.util.Optional;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;
import org.springframework.web.context.request.RequestContextHolder;
import org.springframework.web.context.request.ServletRequestAttributes;

/**
 * Waits for an answer as a page does: it shows the answer if it is made soon, and else how far it is, again and again by
 * itself at the same question. A page that is closed asks no more, and its answer is made no further.
 */
@Component
class TraceTurn {

    /** The page that shows how far an answer is. */
    static final String VIEW = "genealogy/making";

    private final Traces traces;
    private final TraceLimits limits;
    private final Recorder recorder;
    private final ZoneId zone;

    TraceTurn(Traces traces, TraceLimits limits, Recorder recorder, ZoneId zone) {
        this.traces = traces;
        this.limits = limits;
        this.recorder = recorder;
        this.zone = zone;
    }

    /** The answer; nothing if the page is to show how far it is, which is then in the model. */
    Optional<AnswerHead> answer(TraceRequest asked, LineChoice choice, Model model) {
        TraceQuestion question = asked.question(zone);
        ServletRequestAttributes here = (ServletRequestAttributes) RequestContextHolder.currentRequestAttributes();
        HttpServletRequest request = here.getRequest();
        boolean file = request.getParameter("format") != null;
        Traced traced = traces.within(question, file ? limits.longestWait() : limits.pageWait(), watcher());
        TraceProgress making = traced.making();
        if (making != null && file) {
            // who saves a file, or reads it by a program, must not get a page in its place
            throw Traces.notYet();
        }
        if (making != null) {
            String again =
                    request.getRequestURI() + "?" + new TraceAddress(asked.knownAt(making.cutoff())).parameters(choice);
            model.addAttribute("asked", asked.knownAt(making.cutoff()));
            model.addAttribute("making", making);
            model.addAttribute("again", again);
            HttpServletResponse response = here.getResponse();
            if (response != null) {
                response.setHeader("Refresh", Traces.COME_AGAIN.toSeconds() + "; url=" + again);
            }
        }
        return Optional.ofNullable(traced.answer());
    }

    void stop(String id) {
        traces.stop(id, watcher());
    }

    private String watcher() {
        return "page of " + recorder.mark();
    }
}
