package dev.sunthread.scan;

import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.EnvelopeHead;
import dev.sunthread.ledger.Known;
import dev.sunthread.ledger.Manner;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** What persons said that scanned texts mean. */
@Service
public class ScanChoices {

    /** An earlier choice, with when and by whose mark. */
    public record Earlier(String what, String name, String actor, OffsetDateTime at) {}

    private final Door door;
    private final Clock clock;
    private final JdbcClient jdbc;

    ScanChoices(Door door, Clock clock, JdbcClient jdbc) {
        this.door = door;
        this.clock = clock;
        this.jdbc = jdbc;
    }

    /**
     * Records a choice through the door, in the caller's transaction if there is one.
     *
     * @param id the envelope's id, so that sending twice records once
     * @param actor the mark of the person who chose
     * @param source where it was chosen, such as a page or a station
     */
    public void chosen(String id, String actor, String source, ScanChoice choice) {
        var head = new EnvelopeHead(id, "scan-choice", 1, OffsetDateTime.now(clock), actor, source);
        door.accept(Envelope.of(head, choice), Manner.DO);
    }

    /** What the same text was taken for before, the latest first; withdrawn choices are left out. */
    public List<Earlier> earlier(String scanned) {
        return jdbc.sql("""
                        SELECT c.what, concat_ws(' ', c.item, c.name), e.actor, e.occurred_at
                        FROM scan.choice c JOIN ledger.entry e ON e.number = c.entry
                        WHERE c.scanned = ? AND %s ORDER BY c.entry DESC LIMIT 10
                        """.formatted(Known.now("c.entry")))
                .param(ScanChoiceKind.storable(scanned))
                .query((row, number) -> new Earlier(
                        row.getString(1).toLowerCase(java.util.Locale.ROOT).replace('_', ' '),
                        row.getString(2),
                        row.getString(3),
                        row.getObject(4, OffsetDateTime.class)))
                .list();
    }
}
