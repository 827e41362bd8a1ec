package dev.sunthread.production;

import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.EarlierEntries;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Known;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** What must hold when something is put on a carrier; whatever is put on is compared with what history tells. */
@Component
class CarrierRules {

    /** The loads that overlap the new ones in time and share something with them: only the nearest in time can be new. */
    private static final String NEAREST = """
            SELECT n.ordinal, oc.code AS carrier, o.entry, n.unit, o.unit AS other_unit
            FROM production.carrying n
            CROSS JOIN LATERAL (
              (SELECT l.entry, l.ordinal FROM production.carrier_load l
               WHERE %1$s AND (l.loaded_at, l.entry, l.ordinal) < (lower(n.during), n.entry, n.ordinal) AND %2$s
               ORDER BY l.loaded_at DESC, l.entry DESC, l.ordinal DESC LIMIT 1)
              UNION ALL
              (SELECT l.entry, l.ordinal FROM production.carrier_load l
               WHERE %1$s AND (l.loaded_at, l.entry, l.ordinal) > (lower(n.during), n.entry, n.ordinal)
                 AND l.entry <> n.entry AND %2$s
               ORDER BY l.loaded_at, l.entry, l.ordinal LIMIT 1)) near
            JOIN production.carrying o ON o.entry = near.entry AND o.ordinal = near.ordinal AND o.during && n.during
            JOIN production.carrier oc ON oc.id = o.carrier
            WHERE n.entry = :entry ORDER BY n.ordinal
            """;

    private static final String SAME_UNIT = nearest("l.unit = n.unit");
    private static final String SAME_CARRIER = nearest("l.inner_carrier = n.inner_carrier");
    private static final String SAME_POSITION = nearest("l.carrier = n.carrier AND l.position = n.position"
            + " AND (l.unit IS DISTINCT FROM n.unit OR l.inner_carrier IS DISTINCT FROM n.inner_carrier)");

    /** The new loads of carriers whose outer carrier is on them, at any depth, at that time. */
    private static final String IN_ITSELF = """
            WITH RECURSIVE around (ordinal, start, carrier, during) AS (
              SELECT l.ordinal, l.inner_carrier, l.carrier, tstzrange(l.loaded_at, l.loaded_at, '[]')
              FROM production.carrier_load l WHERE l.entry = :entry AND l.inner_carrier IS NOT NULL
              UNION
              SELECT x.ordinal, x.start, c.carrier, x.during FROM around x JOIN production.carrying c ON %s)
            SELECT DISTINCT ordinal FROM around WHERE carrier = start ORDER BY 1
            """.formatted(CarrierHistory.AROUND_IT);

    /** A new load and the recorded one that it contradicts. */
    private record Conflict(
            int ordinal,
            String carrier,
            long entry,
            @Nullable Long unit,
            @Nullable Long otherUnit) {

        TraceRef[] about() {
            return Stream.of(unit, otherUnit)
                    .filter(Objects::nonNull)
                    .distinct()
                    .map(TraceRef::unit)
                    .toArray(TraceRef[]::new);
        }
    }

    private final UnitRules unitRules;
    private final EarlierEntries earlier;
    private final JdbcClient jdbc;

    CarrierRules(UnitRules unitRules, EarlierEntries earlier, JdbcClient jdbc) {
        this.unitRules = unitRules;
        this.earlier = earlier;
        this.jdbc = jdbc;
    }

    private static String nearest(String sameThing) {
        return NEAREST.formatted(sameThing, Known.now("l.entry"));
    }

    void before(Fact<CarrierLoadKind.Body> fact, List<Carried.Thing> things) {
        unitRules.unitsAreBorn(fact, Carried.units(things, fact.body().loads()));
    }

    /** What must hold once it is in history. */
    void after(Fact<CarrierLoadKind.Body> fact) {
        conflicts(fact, SAME_UNIT).forEach(conflict -> nothingIsOnTwoCarriers(fact, conflict));
        conflicts(fact, SAME_CARRIER).forEach(conflict -> nothingIsOnTwoCarriers(fact, conflict));
        conflicts(fact, SAME_POSITION).forEach(conflict -> carrierPositionHoldsOneThing(fact, conflict));
        jdbc.sql(IN_ITSELF)
                .param("entry", fact.entry())
                .query(Integer.class)
                .list()
                .forEach(ordinal -> noCarrierIsInItself(fact, ordinal));
    }

    private List<Conflict> conflicts(Fact<?> fact, String sql) {
        return jdbc.sql(sql)
                .param("entry", fact.entry())
                .query(DataClassRowMapper.newInstance(Conflict.class))
                .list();
    }

    private void nothingIsOnTwoCarriers(Fact<CarrierLoadKind.Body> fact, Conflict conflict) {
        fact.breaks(
                "nothing-is-on-two-carriers",
                what(fact, conflict.ordinal()) + " was put on carrier "
                        + fact.body().carrier() + " while recorded as being on carrier " + conflict.carrier()
                        + ", put there "
                        + earlier.words(conflict.entry(), fact.occurredAt()),
                "Record the unload that was missed, or correct the carrier",
                conflict.about());
    }

    private void carrierPositionHoldsOneThing(Fact<CarrierLoadKind.Body> fact, Conflict conflict) {
        fact.breaks(
                "carrier-position-holds-one-thing",
                what(fact, conflict.ordinal()) + " was put into position "
                        + fact.body().loads().get(conflict.ordinal() - 1).position() + " of carrier "
                        + fact.body().carrier() + ", which is recorded as occupied then, filled "
                        + earlier.words(conflict.entry(), fact.occurredAt()),
                "Record the unload that was missed, or correct the position",
                conflict.about());
    }

    private static void noCarrierIsInItself(Fact<CarrierLoadKind.Body> fact, int ordinal) {
        fact.breaks(
                "no-carrier-is-in-itself",
                what(fact, ordinal) + " was put on carrier " + fact.body().carrier()
                        + ", which is recorded as being on it then",
                "Record the unload that was missed, or correct the carrier");
    }

    private static String what(Fact<CarrierLoadKind.Body> fact, int ordinal) {
        CarrierLoadKind.Load load = fact.body().loads().get(ordinal - 1);
        return load.unit() == null ? "Carrier " + load.carrier() : "Unit " + load.unit();
    }
}
