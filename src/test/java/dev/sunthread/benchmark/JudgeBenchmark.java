package dev.sunthread.benchmark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import dev.sunthread.catalog.FoundError;
import dev.sunthread.catalog.judging.JudgedAgain;
import dev.sunthread.catalog.judging.Question;
import dev.sunthread.electrical.judging.TestVerdicts;
import dev.sunthread.electrical.judging.TestsAgain;
import dev.sunthread.kernel.verdict.Outcome;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.testing.FilledPlant;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Workshop;
import java.math.BigDecimal;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.sql.DataSource;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Prints how long it takes to judge many test runs again. */
@Tag("benchmark")
@SunthreadTest
class JudgeBenchmark {

    private static final int RUNS = Integer.getInteger("sunthread.runs", 100_000);

    @Autowired
    Door door;

    @Autowired
    DataSource database;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    Sealer sealer;

    @Autowired
    TestsAgain again;

    @Autowired
    TestVerdicts verdicts;

    @Test
    void tellsTimes() {
        Workshop workshop = Workshop.released(door);
        workshop.plant().say("specification", "20 00:00", revision());
        FilledPlant.fillTests(database, RUNS);
        jdbc.sql("ANALYZE").update();
        FoundError found = new FoundError(
                null, FoundError.Quantity.CURRENT, null, new BigDecimal("2.6"), FoundError.Onset.UNKNOWN);
        judge("under another revision", List.of());
        judge("with an error of the rig", List.of(found));
        long begin = System.nanoTime();
        int failed = verdicts.found(question(List.of()), List.of(Outcome.FAILED), sealer.seal())
                .size();
        tell("as a scope, judged before", begin);
        // a current scaled by less than 0.99 gives less than 0.75 A
        assertThat(failed).isBetween(RUNS / 4, RUNS / 2);
    }

    private void judge(String what, List<FoundError> errors) {
        long begin = System.nanoTime();
        long job = again.begin(question(errors), sealer.seal());
        await().atMost(Duration.ofHours(1))
                .until(() -> again.find(job).filter(one -> !one.isRunning()).isPresent());
        tell(what, begin);
        JudgedAgain done = again.find(job).orElseThrow();
        assertThat(done.problem()).isNull();
        assertThat(done.done()).isEqualTo(RUNS);
    }

    private static Question question(List<FoundError> errors) {
        return new Question("PULL", "B", null, null, null, errors);
    }

    private static void tell(String what, long begin) {
        double seconds = (System.nanoTime() - begin) / 1e9;
        System.out.printf(
                Locale.ROOT, "%-28s %,9d runs %8.1f s %8.3f ms a run%n", what, RUNS, seconds, seconds * 1e3 / RUNS);
    }

    private static Map<String, Object> revision() {
        Map<String, Object> translation =
                Map.of("procedure", "one-of-2009-and-2021", "alpha", "0.0004", "beta", "-0.002", "series", "0.03");
        List<Map<String, Object>> limits = List.of(
                Map.of("quantity", "short-circuit-current", "bounds", Map.of("least", "0.75")),
                Map.of("quantity", "maximum-power", "bounds", Map.of("least", "0.25")),
                Map.of("quantity", "fill-factor", "bounds", Map.of("least", "0.6")),
                Map.of("quantity", "bypass-steps", "bounds", Map.of("most", "0")));
        Map<String, Object> curve = Map.of(
                "sweep", "light", "powerOrder", 4, "powerPoints", 7, "translation", translation, "limits", limits);
        return Map.of(
                "specification", "PULL", "revision", "B", "name", "Power", "terms", Map.of("curves", List.of(curve)));
    }
}
