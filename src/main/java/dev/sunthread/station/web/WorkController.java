package dev.sunthread.station.web;

import dev.sunthread.access.Caller;
import dev.sunthread.access.Callers;
import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.station.AtWorks;
import dev.sunthread.station.Bench;
import dev.sunthread.station.Scan;
import dev.sunthread.station.contact.ScanOrder;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;

/** The page at a station: one field, what came of the last scan, and what to scan next. */
@Controller
@Needs(Right.WORK)
class WorkController {

    private final Bench bench;
    private final AtWorks atWork;
    private final ScanOrder order;
    private final Callers callers;
    private final Clock clock;

    WorkController(Bench bench, AtWorks atWork, ScanOrder order, Callers callers, Clock clock) {
        this.bench = bench;
        this.atWork = atWork;
        this.order = order;
        this.callers = callers;
        this.clock = clock;
    }

    @GetMapping("/work")
    String page(@RequestHeader(name = "X-Part", required = false) @Nullable String part, Model model) {
        Caller caller = callers.signedIn();
        if (caller.station() == null) {
            return "station/no-station";
        }
        model.addAttribute("work", atWork.at(caller.station(), caller.mark()));
        return part == null ? "station/work" : "station/bench :: bench";
    }

    /** What a device keeps of the page to open it while the server is away: nothing of a person, a station or the record. */
    @GetMapping("/work/shell")
    String shell() {
        return "station/shell";
    }

    /** Takes one scan; the script of the page asks for the changed part alone. */
    @PostMapping("/work")
    String scan(
            ScanForm form,
            @RequestHeader(name = "X-Part", required = false) @Nullable String part,
            Model model,
            HttpServletResponse answer) {
        Caller caller = callers.signedIn();
        if (caller.station() == null) {
            return "station/no-station";
        }
        if (form.isSomething()) {
            Scan scan = order.behindTheLast(caller.station(), caller.mark(), form.scan(clock));
            bench.scan(caller.station(), caller.mark(), scan);
            ScanAnswer.taken(answer, scan);
        }
        model.addAttribute("work", atWork.at(caller.station(), caller.mark()));
        return part == null ? "redirect:/work" : "station/bench :: bench";
    }
}
