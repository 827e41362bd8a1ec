package dev.sunthread.demo.told;

import dev.sunthread.ledger.EnvelopeHead;
import java.time.OffsetDateTime;
import tools.jackson.databind.node.ObjectNode;

/** One actor at one source; each telling gives the id of its envelope. */
public record Teller(Notebook notes, String actor, String source) {

    /** Tells what is recorded within seconds, or once the source is in reach again. */
    public String tell(OffsetDateTime at, String kind, Object... fields) {
        return tell(at, kind, Bodies.of(fields));
    }

    public String tell(OffsetDateTime at, String kind, ObjectNode body) {
        return tellLate(at, notes.recordedAt(source, at), kind, body);
    }

    /** Tells what is recorded at a stated time. */
    public String tellLate(OffsetDateTime at, OffsetDateTime recordedAt, String kind, ObjectNode body) {
        EnvelopeHead head = head(at, kind);
        notes.add(head, body, recordedAt);
        return head.id();
    }

    /** The head of an envelope that this teller would send. */
    public EnvelopeHead head(OffsetDateTime at, String kind) {
        return new EnvelopeHead(notes.nextId(source), kind, 1, PlantTime.local(at), actor, source);
    }
}
