package dev.sunthread.production;

import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** What must hold when something is taken off a carrier. */
@Component
class UnloadRules {

    /** The places in the list of what is on the carrier at the time. */
    private static final String ON_IT = """
            SELECT t.ordinal
            FROM unnest(cast(:units AS bigint[]), cast(:carriers AS bigint[]))
              WITH ORDINALITY AS t (unit, inner_carrier, ordinal)
            WHERE EXISTS (
              SELECT FROM production.carrying c WHERE c.unit = t.unit AND c.carrier = :carrier AND c.during @> :at)
            OR EXISTS (
              SELECT FROM (SELECT t.inner_carrier AS carrier, tstzrange(:at, :at, '[]') AS during) x
              JOIN production.carrying c ON %s WHERE c.carrier = :carrier)
            """.formatted(CarrierHistory.AROUND_IT);

    private final JdbcClient jdbc;

    UnloadRules(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void onlyWhatIsOnTheCarrierIsTakenOff(Fact<CarrierUnloadKind.Body> fact, long carrier, List<Carried.Thing> things) {
        Set<Integer> onIt = jdbc
                .sql(ON_IT)
                .param("units", Carried.unitColumn(things))
                .param("carriers", Carried.carrierColumn(things))
                .param("carrier", carrier)
                .param("at", fact.occurredAt())
                .query(Integer.class)
                .list()
                .stream()
                .collect(Collectors.toSet());
        for (int i = 0; i < things.size(); i++) {
            if (!onIt.contains(i + 1)) {
                breaks(fact, fact.body().unloads().get(i), things.get(i));
            }
        }
    }

    private static void breaks(Fact<CarrierUnloadKind.Body> fact, CarrierUnloadKind.Unload name, Carried.Thing thing) {
        String what = name.unit() == null ? "Carrier " + name.carrier() : "Unit " + name.unit();
        TraceRef[] about = thing.unit() == null
                ? new TraceRef[0]
                : new TraceRef[] {TraceRef.unit(Objects.requireNonNull(thing.unit()))};
        fact.breaks(
                "only-what-is-on-the-carrier-is-taken-off",
                what + " was taken off carrier " + fact.body().carrier() + ", where it is not recorded as being then",
                "Record the load that was missed, or correct the carrier",
                about);
    }
}
