package dev.sunthread.materials;

import dev.sunthread.ledger.Known;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** What is loaded where, for the rules of other modules and for people. */
@Service
public class Charges {

    /**
     * The query that gives every charge known at the parameter {@code cutoff} with its end, for reports that join it: it
     * ends at the next charge of the position or the first discharge behind it, absent while it lasts.
     */
    public static final String KNOWN = """
            SELECT c.entry, c.position, c.lot, c.container, c.charged_at,
              least(
                (SELECT min(n.charged_at) FROM materials.charge n
                 WHERE n.position = c.position AND (n.charged_at, n.entry) > (c.charged_at, c.entry) AND %s),
                (SELECT min(d.discharged_at) FROM materials.discharge d
                 WHERE d.position = c.position AND d.discharged_at > c.charged_at AND %s)) AS until
            FROM materials.charge c WHERE %s
            """.formatted(Known.at("n.entry"), Known.at("d.entry"), Known.at("c.entry"));

    private final Loading loading;
    private final JdbcClient jdbc;

    Charges(Loading loading, JdbcClient jdbc) {
        this.loading = loading;
        this.jdbc = jdbc;
    }

    /** What is loaded at a position at a time, as state has it. */
    public Optional<Loaded> at(long position, OffsetDateTime at) {
        return loading.loadedAt(position, at);
    }

    /** What differs between the state of loaded positions and their history; empty if nothing does. */
    public List<String> differencesFromHistory() {
        return jdbc.sql("""
                        SELECT format('charge of entry %s: state %s, history %s', entry, l.during, h.during)
                        FROM materials.loaded l FULL JOIN materials.loading h USING (entry)
                        WHERE l.during IS DISTINCT FROM h.during OR l.lot IS DISTINCT FROM h.lot ORDER BY 1
                        """).query((row, number) -> row.getString(1)).list();
    }

    /** Writes the state anew from history. */
    public void rebuild() {
        jdbc.sql("DELETE FROM materials.loaded").update();
        jdbc.sql("INSERT INTO materials.loaded (entry, position, lot, during)"
                        + " SELECT entry, position, lot, during FROM materials.loading")
                .update();
    }
}
