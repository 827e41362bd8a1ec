package dev.sunthread.station.web;

import dev.sunthread.access.Caller;
import dev.sunthread.access.Callers;
import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.station.Scan;
import dev.sunthread.station.UnreadScans;
import dev.sunthread.station.contact.ScanOrder;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Clock;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RestController;

/** Where a page puts a scan that the server answered with an error three times, so that the next one can go on. */
@RestController
@Needs(Right.WORK)
class UnreadScanController {

    private final UnreadScans unread;
    private final ScanOrder order;
    private final Callers callers;
    private final Clock clock;

    UnreadScanController(UnreadScans unread, ScanOrder order, Callers callers, Clock clock) {
        this.unread = unread;
        this.order = order;
        this.callers = callers;
        this.clock = clock;
    }

    @PostMapping("/work/unread")
    void keep(ScanForm form, HttpServletResponse answer) {
        Caller caller = callers.signedIn();
        if (caller.station() != null && form.isSomething()) {
            Scan scan = order.behindTheLast(
                    caller.station(), caller.mark(), form.scan(clock).late());
            unread.keep(caller.station(), caller.mark(), scan);
            ScanAnswer.taken(answer, scan);
        }
    }
}
