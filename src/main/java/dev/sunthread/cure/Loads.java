package dev.sunthread.cure;

import dev.sunthread.cure.CureRunKind.CuredCarrier;
import dev.sunthread.cure.CureRunKind.CuredUnit;
import dev.sunthread.ledger.Fact;
import dev.sunthread.production.Carriers;
import dev.sunthread.production.UnitName;
import dev.sunthread.production.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The loads of cure runs; who is in one is looked up and written at once, however many there are. */
@Repository
class Loads {

    /** The run a load is recorded under, its recipe and its equipment. */
    record Run(long run, long recipe, long equipment) {}

    private final Units units;
    private final Carriers carriers;
    private final JdbcClient jdbc;

    Loads(Units units, Carriers carriers, JdbcClient jdbc) {
        this.units = units;
        this.carriers = carriers;
        this.jdbc = jdbc;
    }

    Load known(Fact<CureRunKind.Body> fact) {
        CureRunKind.Body body = fact.body();
        List<UnitName> names = body.units().stream()
                .map(unit -> new UnitName(unit.item(), unit.serial(), unit.issuer()))
                .toList();
        List<Long> numbers = units.known(names, i -> "body.units[" + i + "]");
        List<Load.Member> onIt = members(
                carriers.known(
                        body.carriers().stream().map(CuredCarrier::carrier).toList()),
                body.carriers().stream().map(CuredCarrier::position).toArray(String[]::new));
        Map<Long, UnitName> reached = units.once(names, numbers);
        carriers.unitsOn(onIt.stream().map(Load.Member::id).toList(), body.startedAt(), fact.occurredAt())
                .forEach(reached::putIfAbsent);
        return new Load(
                members(numbers, body.units().stream().map(CuredUnit::position).toArray(String[]::new)), reached, onIt);
    }

    private static List<Load.Member> members(
            List<Long> numbers, @org.jspecify.annotations.Nullable String[] positions) {
        List<Load.Member> members = new ArrayList<>();
        for (int i = 0; i < positions.length; i++) {
            members.add(new Load.Member(numbers.get(i), positions[i]));
        }
        return members;
    }

    void record(Fact<CureRunKind.Body> fact, Run run, Load load) {
        jdbc.sql("""
                        INSERT INTO cure.run_record (entry, run, recipe, equipment, started_at, ended_at)
                        VALUES (?, ?, ?, ?, ?, ?)
                        """)
                .params(fact.entry(), run.run(), run.recipe(), run.equipment())
                .params(fact.body().startedAt(), fact.occurredAt())
                .update();
        recordMembers(fact.entry(), "unit", load.units());
        recordMembers(fact.entry(), "carrier", load.carriers());
    }

    private void recordMembers(long entry, String what, List<Load.Member> members) {
        jdbc.sql("""
                        INSERT INTO cure.run_%1$s (entry, %1$s, position)
                        SELECT :entry, m.member, m.position
                        FROM unnest(cast(:members AS bigint[]), cast(:positions AS text[]))
                          WITH ORDINALITY AS m (member, position, ordinal)
                        ORDER BY m.ordinal ON CONFLICT DO NOTHING
                        """.formatted(what))
                .param("entry", entry)
                .param("members", members.stream().map(Load.Member::id).toArray(Long[]::new))
                .param("positions", members.stream().map(Load.Member::position).toArray(String[]::new))
                .update();
    }
}
