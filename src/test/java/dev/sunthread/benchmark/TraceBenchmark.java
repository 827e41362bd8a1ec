package dev.sunthread.benchmark;

import dev.sunthread.genealogy.Root;
import dev.sunthread.genealogy.TraceQuestion;
import dev.sunthread.genealogy.Traces;
import dev.sunthread.genealogy.Way;
import dev.sunthread.journal.StateCheck;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.FilledPlant;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.IntConsumer;
import javax.sql.DataSource;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** Prints how long traces take on a full plant, and how many envelopes a second go through the door. */
@Tag("benchmark")
@SunthreadTest
class TraceBenchmark {

    private static final int RECEIVERS = Integer.getInteger("sunthread.receivers", 100_000);
    private static final int TIMES = 7;
    private static final int ENVELOPES = 500;

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

    @Test
    void tellsTimes() {
        FilledPlant.fill(door, database, RECEIVERS);
        state.rebuild(done -> {});
        jdbc.sql("ANALYZE").update();
        System.out.printf(Locale.ROOT, "%,d receivers, median of %d%n", RECEIVERS, TIMES);
        trace("forward from a small lot, inferred", Way.FORWARD, new Root.OfLot("L7"));
        trace("forward from a small lot, scanned", Way.FORWARD, new Root.OfLot("S" + RECEIVERS / 100));
        trace("forward from a large lot, scanned", Way.FORWARD, new Root.OfLot("LARGE"));
        trace("backward from a panel", Way.BACKWARD, new Root.OfUnit(Plant.id("PANEL p1")));
        Plant plant = new Plant(door, "told");
        perSecond("births, a transaction each", i -> plant.birth("08:00", "RCV", "n" + i));
        perSecond("bonds, a transaction each", i -> plant.bondAt("09:00", "n" + i, "V1"));
        TransactionTemplate together = new TransactionTemplate(transactions);
        together.executeWithoutResult(
                status -> perSecond("bonds, all in one transaction", i -> plant.bondAt("10:00", "n" + i, "V1")));
    }

    @Test
    void tellsTimesWhereAllIsDemanded() {
        FilledPlant.fillDemanding(door, database, RECEIVERS);
        state.rebuild(done -> {});
        jdbc.sql("ANALYZE").update();
        System.out.printf(
                Locale.ROOT, "%,d receivers with all that is demanded, first and median of %d%n", RECEIVERS, TIMES);
        trace("forward from a lot, scanned", Way.FORWARD, new Root.OfLot("G7"));
        trace("forward from a lot, inferred", Way.FORWARD, new Root.OfLot("L7"));
        trace("backward from a panel", Way.BACKWARD, new Root.OfUnit(Plant.id("PANEL p1")));
        trace("backward from a receiver", Way.BACKWARD, new Root.OfUnit(Plant.id("RCV r7")));
    }

    private void trace(String what, Way way, Root root) {
        long[] nanos = new long[TIMES];
        long lines = 0;
        for (int i = 0; i < TIMES; i++) {
            jdbc.sql("DELETE FROM genealogy.answer").update();
            long begin = System.nanoTime();
            lines = traces.ask(new TraceQuestion(way, root, null, null)).counts().stream()
                    .filter(count -> count.when() == dev.sunthread.genealogy.When.EVER)
                    .mapToLong(count -> count.certain() + count.possible() + count.unproven())
                    .sum();
            nanos[i] = System.nanoTime() - begin;
        }
        double first = nanos[0] / 1e6;
        Arrays.sort(nanos);
        System.out.printf(
                Locale.ROOT,
                "%-36s %,9d lines, first %,9.0f ms, then %,9.0f ms%n",
                what,
                lines,
                first,
                nanos[TIMES / 2] / 1e6);
    }

    private static void perSecond(String what, IntConsumer tell) {
        long begin = System.nanoTime();
        for (int i = 0; i < ENVELOPES; i++) {
            tell.accept(i);
        }
        System.out.printf(
                Locale.ROOT, "%-36s %,9.0f a second%n", what, ENVELOPES / ((System.nanoTime() - begin) / 1e9));
    }
}
