package dev.sunthread.scan;

import dev.sunthread.kernel.SerialPattern;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.EnvelopeHead;
import dev.sunthread.ledger.Known;
import dev.sunthread.ledger.Manner;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** Serials that were given out on labels. */
@Service
public class IssuedSerials {

    /** Serials given out together. */
    public record Batch(String item, List<String> serials) {}

    private final Door door;
    private final Clock clock;
    private final JdbcClient jdbc;

    IssuedSerials(Door door, Clock clock, JdbcClient jdbc) {
        this.door = door;
        this.clock = clock;
        this.jdbc = jdbc;
    }

    /** Records through the door that serials are given out; one that was given out before is refused. */
    public void issue(String id, String actor, Batch batch) {
        var head = new EnvelopeHead(id, "serial-issue", 1, OffsetDateTime.now(clock), actor, "page");
        door.accept(Envelope.of(head, new SerialIssueKind.Body(batch.item(), batch.serials())), Manner.DO);
    }

    /** What the entry of that id gave out. */
    public Optional<Batch> batch(String id) {
        return jdbc.sql("""
                        SELECT i.number, array_agg(s.serial ORDER BY s.serial)
                        FROM scan.issued_serial s JOIN catalog.item i ON i.id = s.item
                        JOIN ledger.entry e ON e.number = s.entry WHERE e.id = ? AND %s GROUP BY 1
                        """.formatted(Known.now("s.entry")))
                .param(id)
                .query((row, number) -> new Batch(
                        row.getString(1), List.of((String[]) row.getArray(2).getArray())))
                .optional();
    }

    /** The last serial of an item and pattern that was given out. */
    public Optional<String> last(String item, SerialPattern pattern) {
        return jdbc.sql("""
                        SELECT max(s.serial) FROM scan.issued_serial s JOIN catalog.item i ON i.id = s.item
                        WHERE i.number = ? AND s.serial ~ ? AND %s HAVING count(*) > 0
                        """.formatted(Known.now("s.entry")))
                .params(item, pattern.expression())
                .query(String.class)
                .optional();
    }
}
