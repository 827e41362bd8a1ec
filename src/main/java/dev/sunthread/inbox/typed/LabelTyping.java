package dev.sunthread.inbox.typed;

import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.EnvelopeHead;
import dev.sunthread.ledger.Manner;
import java.time.Clock;
import java.time.OffsetDateTime;
import org.springframework.stereotype.Service;

/** Records through the door that two persons typed a label that nobody could read. */
@Service
public class LabelTyping {

    private final Door door;
    private final Clock clock;

    LabelTyping(Door door, Clock clock) {
        this.door = door;
        this.clock = clock;
    }

    /**
     * Records it.
     *
     * @param id of the envelope
     * @throws dev.sunthread.kernel.Refused if both are the same person
     */
    public void typed(String id, String text, String station, String typedBy, String confirmedBy) {
        var head = new EnvelopeHead(id, "typed-label", 1, OffsetDateTime.now(clock), typedBy, station);
        door.accept(Envelope.of(head, new TypedLabelKind.Body(text, station, confirmedBy)), Manner.DO);
    }
}
