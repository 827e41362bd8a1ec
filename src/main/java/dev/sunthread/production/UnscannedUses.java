package dev.sunthread.production;

import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Uses without a scan by position and time: state that follows the history of steps. */
@Repository
public class UnscannedUses {

    private final JdbcClient jdbc;

    UnscannedUses(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void follow(long step) {
        jdbc.sql("INSERT INTO production.unscanned_use SELECT * FROM production.use_without_scan WHERE entry = ?")
                .param(step)
                .update();
    }

    /** What differs between this state and the history of steps; empty if nothing does. */
    public List<String> differencesFromHistory() {
        return jdbc.sql("""
                        SELECT format('use %s of entry %s: state %s, history %s', ordinal, entry, s, h)
                        FROM production.unscanned_use s FULL JOIN production.use_without_scan h USING (entry, ordinal)
                        WHERE (s.item, s.position, s.during) IS DISTINCT FROM (h.item, h.position, h.during) ORDER BY 1
                        """).query((row, number) -> row.getString(1)).list();
    }

    /** Writes the state anew from history. */
    public void rebuild() {
        jdbc.sql("DELETE FROM production.unscanned_use").update();
        jdbc.sql("INSERT INTO production.unscanned_use SELECT * FROM production.use_without_scan")
                .update();
    }
}
