package dev.sunthread.web.inbox;

import dev.sunthread.access.Callers;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.EnvelopeHead;
import dev.sunthread.ledger.Manner;
import java.time.Clock;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Records what the signed-in person decided about a kept line or a finding, through the door. */
@Service
class Settlements {

    private final Door door;
    private final Callers callers;
    private final Clock clock;

    Settlements(Door door, Callers callers, Clock clock) {
        this.door = door;
        this.callers = callers;
        this.clock = clock;
    }

    /** Settles a finding. */
    void settle(FindingForm form) {
        ObjectNode body = JsonNodeFactory.instance.objectNode();
        body.put("entry", form.entry());
        body.put("finding", form.finding());
        body.put("why", stripped(form.why()));
        say(form.id(), "finding-settlement", body);
    }

    /** Settles a kept line; it was recorded as another envelope, or tells nothing. */
    void settleLine(String line, @Nullable String resubmittedAs, String id, @Nullable String why) {
        ObjectNode body = JsonNodeFactory.instance.objectNode();
        body.put("line", line);
        if (resubmittedAs != null) {
            body.put("resubmittedAs", resubmittedAs);
        }
        body.put("why", stripped(why));
        say(id, "line-settlement", body);
    }

    private void say(String id, String kind, ObjectNode body) {
        var head = new EnvelopeHead(
                id, kind, 1, OffsetDateTime.now(clock), callers.signedIn().mark(), "page");
        door.accept(Envelope.of(head, body), Manner.DO);
    }

    private static String stripped(@Nullable String text) {
        return text == null ? "" : text.strip().replaceAll("\\s+", " ");
    }
}
