package dev.sunthread.genealogy;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.journal.StateCheck;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.FilledPlant;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
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
        assertTellsByFewRows("birth", () -> plant.birth("08:00", "RCV", "n" + turn));
        assertTellsByFewRows("charge", () -> plant.charge("08:00", "L" + (1 + turn % 10), "V1"));
        assertTellsByFewRows("discharge", () -> plant.discharge("08:01", "V1"));
        assertTellsByFewRows("bond at a position", () -> plant.bondAt("08:02", "n" + turn, "V1", "L3"));
        assertTellsByFewRows("installation", () -> plant.install("09:00", "RCV n" + turn, "WALL w" + turn, "9"));
        assertTellsByFewRows("void", () -> {
            plant.install("09:00", "RCV n" + turn, "WALL w" + (turn + 20), "9");
            plant.undo("09:01", plant.lastId());
        });
        assertTellsByFewRows("removal", () -> plant.remove("09:30", "RCV r" + turn, "WALL w1"));
        assertTellsByFewRows("shipment", () -> plant.ship("10:00", "S-9", "Site South", "PANEL p1"));
        assertTellsByFewRows("part of a lot", () -> part(plant));
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
        turn = 0;
        assertLooksUpRows(what, few, happening);
    }

    private void assertLooksUpRows(String what, long few, Runnable happening) {
        // whole tables cost too much to be read where rows can be looked up, so that small ones tell of large ones too
        assertTouches(what + ", where reading a table whole is dear", "off", few, happening, any -> true);
    }

    // a station waits for it, so it is asked of the plans that the plant has too
    private void assertTellsByFewRows(String what, Runnable happening) {
        turn = 0;
        assertLooksUpRows(what, RECEIVERS / 5, happening);
        // a small table is quicker read whole, and says nothing about a large one
        assertTouches(what + ", as the plant runs", "on", RECEIVERS / 5, happening, large()::contains);
    }

    private void assertTouches(
            String what, String wholeTables, long few, Runnable happening, Predicate<String> counted) {
        Map<String, Long> touched = new TreeMap<>();
        new TransactionTemplate(transactions).executeWithoutResult(status -> {
            jdbc.sql("SET LOCAL enable_seqscan = " + wholeTables).update();
            // a plan that was made before would stay
            jdbc.sql("DISCARD PLANS").update();
            Map<String, Long> before = touched();
            for (int i = 0; i < TIMES; i++) {
                turn++;
                happening.run();
            }
            touched().forEach((table, rows) -> touched.put(table, (rows - before.getOrDefault(table, 0L)) / TIMES));
        });
        touched.keySet().removeIf(counted.negate());
        assertThat(touched)
                .as(what)
                .allSatisfy((table, rows) -> assertThat(rows).as(table).isLessThan(few));
    }

    private Set<String> large() {
        return Set.copyOf(jdbc.sql("""
                        SELECT schemaname || '.' || relname FROM pg_stat_user_tables
                        WHERE n_live_tup >= ?
                        """).param(RECEIVERS / 2).query(String.class).list());
    }

    private Map<String, Long> touched() {
        Map<String, Long> touched = new HashMap<>();
        jdbc.sql(TOUCHED)
                .query((row, number) -> touched.put(row.getString(1), row.getLong(2)))
                .list();
        return touched;
    }
}
