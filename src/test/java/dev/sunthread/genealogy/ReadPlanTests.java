package dev.sunthread.genealogy;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.journal.StateCheck;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.FilledPlant;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** What is asked and told in a full database touches the rows it needs. {@code -Dsunthread.receivers} makes it fuller. */
@SunthreadTest
class ReadPlanTests {

    private static final int RECEIVERS = Integer.getInteger("sunthread.receivers", 10_000);
    // the database prepares a statement for any parameters once it has run some times
    private static final int TIMES = 12;

    /** Rows touched since the session began, by table. */
    private static final String TOUCHED = """
            SELECT schemaname || '.' || relname, coalesce(seq_tup_read, 0) + coalesce(idx_tup_fetch, 0)
            FROM pg_stat_xact_user_tables
            """;

    @Autowired
    Door door;

    @Autowired
    Traces traces;

    @Autowired
    StateCheck state;

    @Autowired
    DataSource database;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    PlatformTransactionManager transactions;

    private int turn;

    @BeforeEach
    void filled() {
        FilledPlant.fill(door, database, RECEIVERS);
        state.rebuild(done -> {});
        jdbc.sql("ANALYZE").update();
    }

    @Test
    void asksAndTellsWithoutReadingWholeTables() {
        Asked asked = new Asked(traces);
        Plant plant = new Plant(door, "later");
        assertTouchesFewRows("forward from a lot", () -> asked.lot("L" + turn));
        assertTouchesFewRows("forward from a scanned lot", () -> asked.lot("S" + (RECEIVERS / 100 - turn)));
        // what happened to anything in a panel may have reached all in it, and a panel is a tenth of this plant
        assertTouchesFewRows("backward from a module", 2 * RECEIVERS, () -> asked.unit("MOD", "m" + turn));
        assertTouchesFewRows("backward from a receiver", 2 * RECEIVERS, () -> asked.unit("RCV", "r" + (1000 + turn)));
        assertTouchesFewRows("birth", () -> plant.birth("08:00", "RCV", "n" + turn));
        assertTouchesFewRows("charge", () -> plant.charge("08:00", "L" + (1 + turn % 10), "V1"));
        assertTouchesFewRows("discharge", () -> plant.discharge("08:01", "V1"));
        assertTouchesFewRows("bond at a position", () -> plant.bondAt("08:02", "n" + turn, "V1", "L3"));
        assertTouchesFewRows("installation", () -> plant.install("09:00", "RCV n" + turn, "WALL w" + turn, "9"));
        assertTouchesFewRows("void", () -> {
            plant.install("09:00", "RCV n" + turn, "WALL w" + (turn + 20), "9");
            plant.undo("09:01", plant.lastId());
        });
        assertTouchesFewRows("removal", () -> plant.remove("09:30", "RCV r" + turn, "WALL w1"));
        assertTouchesFewRows("shipment", () -> plant.ship("10:00", "S-9", "Site South", "PANEL p1"));
        assertTouchesFewRows("part of a lot", () -> part(plant));
    }

    private void part(Plant plant) {
        plant.say(
                "installation",
                "09:00",
                Map.of(
                        "child",
                        Map.of("lot", "LARGE"),
                        "parent",
                        Map.of("item", "WALL", "serial", "w" + turn),
                        "position",
                        "part"));
    }

    // what is loaded where is looked at in the whole plant: one charge to a hundred receivers, some rows each
    private void assertTouchesFewRows(String what, Runnable happening) {
        assertTouchesFewRows(what, RECEIVERS / 5, happening);
    }

    private void assertTouchesFewRows(String what, long few, Runnable happening) {
        Map<String, Long> touched = new TreeMap<>();
        new TransactionTemplate(transactions).executeWithoutResult(status -> {
            // a small table is quicker read whole, and says nothing about a large one
            jdbc.sql("SET LOCAL enable_seqscan = off").update();
            Map<String, Long> before = touched();
            for (turn = 1; turn <= TIMES; turn++) {
                happening.run();
            }
            touched().forEach((table, rows) -> touched.put(table, (rows - before.getOrDefault(table, 0L)) / TIMES));
        });
        assertThat(touched)
                .as(what)
                // what is loaded where is looked at in the whole plant: one charge to a hundred receivers, some rows
                // each
                .allSatisfy((table, rows) -> assertThat(rows).as(table).isLessThan(few));
    }

    private Map<String, Long> touched() {
        Map<String, Long> touched = new HashMap<>();
        jdbc.sql(TOUCHED)
                .query((row, number) -> touched.put(row.getString(1), row.getLong(2)))
                .list();
        return touched;
    }
}
