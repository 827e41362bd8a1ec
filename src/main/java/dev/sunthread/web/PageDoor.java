package dev.sunthread.web;

import dev.sunthread.access.Callers;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.EnvelopeHead;
import dev.sunthread.ledger.Manner;
import java.time.Clock;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import tools.jackson.databind.node.ObjectNode;

/** Records through the door what the signed-in person says in a page, as happening now. */
@Service
public class PageDoor {

    private final Door door;
    private final Callers callers;
    private final Clock clock;

    PageDoor(Door door, Callers callers, Clock clock) {
        this.door = door;
        this.callers = callers;
        this.clock = clock;
    }

    /**
     * Says one thing; the same id again changes nothing.
     *
     * @throws dev.sunthread.kernel.Refused if it can't be read, or a rule forbids it
     */
    public void say(String id, String kind, ObjectNode body) {
        var head = new EnvelopeHead(
                id, kind, 1, OffsetDateTime.now(clock), callers.signedIn().mark(), "page");
        door.accept(Envelope.of(head, body), Manner.DO);
    }

    /** What a person typed as one line. */
    public static String line(@Nullable String text) {
        return text == null ? "" : text.strip().replaceAll("\\s+", " ");
    }
}
