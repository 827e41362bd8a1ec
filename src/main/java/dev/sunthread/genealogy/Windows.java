package dev.sunthread.genealogy;

import dev.sunthread.catalog.judging.Under;
import dev.sunthread.electrical.judging.TestVerdicts;
import dev.sunthread.genealogy.history.Clocks;
import dev.sunthread.genealogy.history.KnownNames;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.verdict.Outcome;
import dev.sunthread.ledger.Known;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Proposes windows: each opens at the last verified good event that was able to see the fault and closes at the first
 * clean point behind the time it was noticed, both moved apart by what clocks may be off.
 */
public final class Windows {

    /** Good checks of equipment; with a fault only those under a specification that is released as able to see it. */
    private static final String GOOD_CHECKS = """
            SELECT c.checked_at, lower(c.way), s.code FROM catalog.equipment_check c
            JOIN catalog.equipment e ON e.id = c.equipment LEFT JOIN catalog.specification s ON s.id = c.specification
            WHERE e.code = :equipment AND c.verdict = 'GOOD' AND %s AND (:fault::text IS NULL OR c.specification IN (
              SELECT t.specification FROM catalog.fault_test t JOIN catalog.fault_revision r USING (entry)
              JOIN catalog.fault f ON f.id = r.fault
              WHERE f.code = :fault AND r.effective_at <= c.checked_at AND %s))
            """.formatted(Known.at("c.entry"), Known.at("r.entry"));

    /**
     * Steps at a station before the time whose unit passed a test able to see the fault afterwards, on a rig whose
     * checks around that test were not bad. In a spell of times that are not proven the test may have come first.
     */
    private static final String PASSED = """
            SELECT p.started_at, n.number, d.code, t.entry FROM production.step p
            JOIN catalog.station st ON st.id = p.station
            JOIN production.step_unit w ON w.entry = p.entry
            JOIN electrical.run_record t ON t.unit = w.unit AND t.started_at > p.ended_at
            JOIN electrical.run n ON n.id = t.run JOIN catalog.specification d ON d.id = t.specification
            WHERE st.code = :station AND p.ended_at <= :noticed AND t.verdict = 'PASS' AND %s AND %s
              AND EXISTS (SELECT FROM catalog.fault_test k JOIN catalog.fault_revision r USING (entry)
                JOIN catalog.fault f ON f.id = r.fault
                WHERE f.code = :fault AND k.specification = t.specification AND r.effective_at <= t.started_at AND %s)
              AND coalesce((SELECT c.verdict FROM catalog.equipment_check c
                WHERE c.equipment = t.equipment AND c.checked_at <= t.started_at AND %s
                ORDER BY c.checked_at DESC, c.entry DESC LIMIT 1), 'BAD') = 'GOOD'
              AND coalesce((SELECT c.verdict FROM catalog.equipment_check c
                WHERE c.equipment = t.equipment AND c.checked_at >= t.ended_at AND %s
                ORDER BY c.checked_at, c.entry LIMIT 1), 'GOOD') = 'GOOD'
              AND NOT EXISTS (SELECT FROM quality.unproven_time x
                WHERE (p.ended_at BETWEEN x.since AND x.until OR t.started_at BETWEEN x.since AND x.until) AND %s)
            ORDER BY p.started_at DESC, t.entry, p.entry
            """.formatted(
                    Known.at("p.entry"),
                    Known.at("t.entry"),
                    Known.at("r.entry"),
                    Known.at("c.entry"),
                    Known.at("c.entry"),
                    Known.at("x.entry"));

    /** Whether what is told of a time behind that at which it was noticed surely was behind it. */
    private static final String SURELY_BEHIND = """
             AND NOT EXISTS (SELECT FROM quality.unproven_time x
              WHERE cast(:noticed AS timestamptz) BETWEEN x.since AND x.until
                AND %%s BETWEEN x.since AND x.until AND %s)
            """.formatted(Known.at("x.entry"));

    private static final String CLEANED = """
            SELECT c.cleaned_at, c.evidence, NULL FROM materials.clean_point c
            JOIN catalog.position p ON p.id = c.position JOIN catalog.station s ON s.id = p.station
            WHERE s.code = :station AND p.code = :position AND c.cleaned_at > :noticed AND %s %s
            ORDER BY c.cleaned_at, c.entry LIMIT 1
            """.formatted(Known.at("c.entry"), SURELY_BEHIND.formatted("c.cleaned_at"));

    private record Event(
            OffsetDateTime at, String what, @Nullable String under) {

        String words() {
            return what + (under == null ? "" : " under " + under);
        }
    }

    private record Passed(Event event, long test) {}

    private final JdbcClient jdbc;
    private final long cutoff;
    private final TestVerdicts tests;
    private final KnownNames names;
    private final Clocks clocks;

    public Windows(JdbcClient jdbc, long cutoff, TestVerdicts tests) {
        this.jdbc = jdbc;
        this.tests = tests;
        this.names = new KnownNames(jdbc, cutoff);
        this.cutoff = cutoff;
        this.clocks = new Clocks(jdbc, cutoff);
    }

    /** For an oven, a lamp or a rig; without a fault any good check counts, and without a time the window is open. */
    public ProposedWindow ofEquipment(String equipment, @Nullable String fault, @Nullable OffsetDateTime noticed) {
        names.equipment(equipment);
        Map<String, Object> params = new HashMap<>();
        params.put("equipment", equipment);
        params.put("fault", fault);
        params.put("noticed", noticed);
        String seeing = fault == null ? "good" : "good and able to see " + fault;
        Optional<Event> last = event(
                GOOD_CHECKS
                        + " AND (:noticed::timestamptz IS NULL OR c.checked_at <= :noticed) ORDER BY c.checked_at DESC, c.entry DESC LIMIT 1",
                params);
        Optional<Event> next = noticed == null
                ? Optional.empty()
                : event(
                        GOOD_CHECKS + " AND c.checked_at > :noticed " + SURELY_BEHIND.formatted("c.checked_at")
                                + " ORDER BY c.checked_at, c.entry LIMIT 1",
                        params);
        return proposed(
                last,
                next,
                last.map(event -> "The last check that was " + seeing + " is the " + event.words())
                        .orElse("No check that was " + seeing + " is recorded before: everything counts"),
                next.map(event -> "The first check behind it that was " + seeing + " is the " + event.words())
                        .orElse("No check that was " + seeing + " is recorded behind it: it is open still"));
    }

    /** For a position of a station at which something went wrong. */
    public ProposedWindow ofPosition(String station, String position, String fault, OffsetDateTime noticed) {
        names.station(station);
        Map<String, Object> params =
                Map.of("station", station, "position", position, "fault", fault, "noticed", noticed);
        Optional<Event> last = passed(params);
        Optional<Event> cleaned = event(CLEANED, params);
        return proposed(
                last,
                cleaned,
                last.map(event -> "The last unit made here before that passed a test able to see " + fault
                                + " on a good rig is that of test run " + event.words())
                        .orElse("No unit made here before passed a test able to see " + fault
                                + " on a rig that was checked good: everything counts"),
                cleaned.map(event -> "The first clean point behind it: " + event.what())
                        .orElse("No clean point is recorded behind it: it is open still"));
    }

    private ProposedWindow proposed(Optional<Event> open, Optional<Event> close, String opened, String closed) {
        Scope.Window window = new Scope.Window(
                open.map(event -> Clocks.time(clocks.told(null, micros(event)).early()))
                        .orElse(null),
                close.map(event -> Clocks.time(clocks.told(null, micros(event)).late()))
                        .orElse(null));
        boolean isProven = Stream.concat(open.stream(), close.stream())
                .allMatch(event -> clocks.proven(micros(event)).equals(Moment.at(micros(event))));
        return new ProposedWindow(
                window,
                opened,
                closed,
                "Both ends are moved apart by " + clocks.worst().toSeconds()
                        + " s, by which the least exact clock may be off"
                        + (isProven ? "" : ", and by as much as leaves unproven when it was"));
    }

    private static long micros(Event event) {
        return ChronoUnit.MICROS.between(Instant.EPOCH, event.at().toInstant());
    }

    private Optional<Event> event(String sql, Map<String, Object> params) {
        return jdbc.sql(sql)
                .params(params)
                .param("cutoff", cutoff)
                .query((row, number) -> event(row))
                .optional();
    }

    /** The last of them whose raw data do not deny the pass, by what was released and checked then. */
    private Optional<Event> passed(Map<String, Object> params) {
        return jdbc
                .sql(PASSED)
                .params(params)
                .param("cutoff", cutoff)
                .query((row, number) -> new Passed(event(row), row.getLong(4)))
                .list()
                .stream()
                .filter(passed -> isShown(passed.test()))
                .map(Passed::event)
                .findFirst();
    }

    private boolean isShown(long test) {
        return tests.under(test, cutoff).stream()
                .filter(Under::inForce)
                .allMatch(under -> under.judged().judgement().outcome() == Outcome.PASSED);
    }

    private static Event event(ResultSet row) throws SQLException {
        return new Event(row.getObject(1, OffsetDateTime.class), row.getString(2), row.getString(3));
    }
}
