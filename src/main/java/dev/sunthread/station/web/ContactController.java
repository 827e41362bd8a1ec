package dev.sunthread.station.web;

import dev.sunthread.access.Caller;
import dev.sunthread.access.Callers;
import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.station.Stops;
import dev.sunthread.station.contact.PageContacts;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/**
 * Where open pages say that they are there. After the first time they come without a session, which would otherwise never
 * end by itself, under a name that the page made up; it is good for nothing else.
 */
@RestController
class ContactController {

    private final PageContacts contacts;
    private final Stops stops;
    private final Callers callers;

    private final Clock clock;

    ContactController(PageContacts contacts, Stops stops, Callers callers, Clock clock) {
        this.contacts = contacts;
        this.stops = stops;
        this.callers = callers;
        this.clock = clock;
    }

    /** The server's time in milliseconds since 1970: what the page kept before it was opened was scanned by then. */
    record Opened(long now) {}

    /** A page was opened by the person who is signed in. */
    @PostMapping("/work/page")
    @Needs(Right.WORK)
    Opened opened(@RequestParam UUID page) {
        Caller caller = callers.signedIn();
        if (caller.station() != null) {
            contacts.opened(page, caller.station(), caller.mark());
        }
        return new Opened(clock.millis());
    }

    /**
     * A page's station: a mark that changes when what must come off there does, and the server's time in milliseconds since
     * 1970, by which the page reckons when something was scanned.
     */
    record Heard(String stops, long now) {}

    /** Takes a page's word. */
    @PostMapping("/contact")
    @Needs(Right.SIGN_IN)
    ResponseEntity<Heard> heard(
            @RequestParam UUID page,
            @RequestParam(defaultValue = "0") int kept,
            @RequestParam(defaultValue = "false") boolean closing,
            @RequestParam(required = false) @Nullable Long at) {
        OffsetDateTime counted =
                at == null ? null : Instant.ofEpochMilli(Math.max(0, at)).atOffset(ZoneOffset.UTC);
        return ResponseEntity.of(contacts.heard(page, Math.max(0, kept), closing, counted)
                .map(station -> new Heard(stops.markOf(station), clock.millis())));
    }
}
