package dev.sunthread.demo.told;

import dev.sunthread.ledger.EnvelopeHead;
import java.time.OffsetDateTime;
import tools.jackson.databind.node.ObjectNode;

/** One actor at one source; each telling gives the id of its envelope. */
public record Teller(Notebook notes, String actor, String source) {

    /** Tells what is recorded within seconds. */
    public String tell(OffsetDateTime at, String kind, ObjectNode body) {
        return tellLate(at, at.plusSeconds(notes.between(1, 4)), kind, body);
    }

    /** Tells what is recorded later, as from a scanner that was out of reach. */
    public String tellLate(OffsetDateTime at, OffsetDateTime recordedAt, String kind, ObjectNode body) {
        EnvelopeHead head = head(at, kind);
        notes.add(head, body, recordedAt);
        return head.id();
    }

    /** The head of an envelope that this teller would send. */
    public EnvelopeHead head(OffsetDateTime at, String kind) {
        return new EnvelopeHead(notes.nextId(source), kind, 1, at, actor, source);
    }
}
