package dev.sunthread.production;

import dev.sunthread.ledger.Known;
import dev.sunthread.ledger.Remembered;
import dev.sunthread.ledger.SoleWriter;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BinaryOperator;
import java.util.function.Predicate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** When operations were last begun and done on units. */
@Repository
class OperationEnds {

    private static final String ENDS = """
            SELECT n.unit, n.entry, s.operation, s.started_at, s.ended_at
            FROM production.step_unit n JOIN production.step s USING (entry)
            WHERE n.unit = ANY (:units) AND %s
            """.formatted(Known.now("n.entry"));

    private static final BinaryOperator<OffsetDateTime> LATER = BinaryOperator.maxBy(OffsetDateTime.timeLineOrder());

    private record Done(long entry, String operation, OffsetDateTime startedAt, OffsetDateTime endedAt) {}

    private final SoleWriter sole;
    private final JdbcClient jdbc;

    OperationEnds(SoleWriter sole, JdbcClient jdbc) {
        this.sole = sole;
        this.jdbc = jdbc;
    }

    private Map<Long, List<Done>> remembered() {
        return sole.known("operations done");
    }

    /** Says that these units were not there before the transaction, so that nothing was done on them. */
    void begin(Collection<Long> units) {
        units.forEach(unit -> remembered().put(unit, new ArrayList<>()));
    }

    /** Says that an operation on these units is being recorded. */
    void add(long entry, String operation, Collection<Long> units, OffsetDateTime startedAt, OffsetDateTime endedAt) {
        Done done = new Done(
                entry,
                operation,
                startedAt.withOffsetSameInstant(ZoneOffset.UTC),
                endedAt.withOffsetSameInstant(ZoneOffset.UTC));
        units.forEach(unit -> remembered().computeIfPresent(unit, (any, before) -> {
            before.add(done);
            return before;
        }));
    }

    /** Of each unit, when each operation recorded of it last ended by a time; asked of all at once. */
    Map<Long, Map<String, OffsetDateTime>> by(Collection<Long> units, OffsetDateTime at) {
        Map<Long, Map<String, OffsetDateTime>> ends = new HashMap<>();
        done(units, done -> !done.endedAt().isAfter(at))
                .forEach((unit, operations) ->
                        operations.forEach(done -> ends.computeIfAbsent(unit, any -> new HashMap<>())
                                .merge(done.operation(), done.endedAt(), LATER)));
        return ends;
    }

    /** When an operation last ended on each of these units, but for what this entry tells. */
    Map<Long, OffsetDateTime> before(long entry, String operation, Collection<Long> units, OffsetDateTime at) {
        Map<Long, OffsetDateTime> ends = new HashMap<>();
        done(
                        units,
                        done -> done.entry() != entry
                                && done.operation().equals(operation)
                                && !done.endedAt().isAfter(at))
                .forEach((unit, operations) -> operations.forEach(done -> ends.merge(unit, done.endedAt(), LATER)));
        return ends;
    }

    /** When an operation last began on each of these units by a time. */
    Map<Long, OffsetDateTime> begun(String operation, Collection<Long> units, OffsetDateTime at) {
        Map<Long, OffsetDateTime> begun = new HashMap<>();
        done(
                        units,
                        done -> done.operation().equals(operation)
                                && !done.startedAt().isAfter(at))
                .forEach((unit, steps) -> steps.forEach(done -> begun.merge(unit, done.startedAt(), LATER)));
        return begun;
    }

    private Map<Long, List<Done>> done(Collection<Long> units, Predicate<Done> wanted) {
        Map<Long, List<Done>> done = Remembered.each(remembered(), units, this::ask);
        done.replaceAll((unit, all) -> all.stream().filter(wanted).toList());
        return done;
    }

    private Map<Long, List<Done>> ask(Collection<Long> units) {
        Map<Long, List<Done>> done = new HashMap<>();
        units.forEach(unit -> done.put(unit, new ArrayList<>()));
        jdbc.sql(ENDS).param("units", units.toArray(Long[]::new)).query(row -> {
            Done one = new Done(
                    row.getLong(2),
                    row.getString(3),
                    row.getObject(4, OffsetDateTime.class),
                    row.getObject(5, OffsetDateTime.class));
            done.computeIfPresent(row.getLong(1), (unit, before) -> {
                before.add(one);
                return before;
            });
        });
        return done;
    }
}
