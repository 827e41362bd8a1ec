package dev.sunthread.cure;

import dev.sunthread.kernel.verdict.Judgement;
import dev.sunthread.production.Carriers;
import dev.sunthread.production.UnitName;
import java.time.OffsetDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** What the bonds of a load became, where they are judged apart from its run. */
@Component
public class BondVerdicts {

    private final CuresOfUnits cures;
    private final Bonds bonds;
    private final Carriers carriers;
    private final JdbcClient jdbc;

    BondVerdicts(CuresOfUnits cures, Bonds bonds, Carriers carriers, JdbcClient jdbc) {
        this.cures = cures;
        this.bonds = bonds;
        this.carriers = carriers;
        this.jdbc = jdbc;
    }

    /**
     * A bond with all its cures by one recipe.
     *
     * @param runs the numbers of the runs, the earliest first
     * @param position where in the equipment it was in the run that was asked for, if known
     */
    public record BondVerdict(
            UnitName unit, List<String> runs, @Nullable String position, Judgement judgement) {}

    private record Run(long recipe, OffsetDateTime startedAt, OffsetDateTime endedAt) {}

    /** The bonds of the load that an entry recorded, as known now. */
    public List<BondVerdict> of(long entry) {
        Run run = jdbc.sql("SELECT recipe, started_at, ended_at FROM cure.run_record WHERE entry = ?")
                .param(entry)
                .query((row, number) -> new Run(
                        row.getLong(1), row.getObject(2, OffsetDateTime.class), row.getObject(3, OffsetDateTime.class)))
                .single();
        Map<Long, UnitName> units = units(entry, run);
        Map<Long, List<CuresOfUnits.Reached>> reached = cures.of(run.recipe(), units.keySet(), null);
        Map<Long, Judgement> judged = bonds.judged(reached);
        return units.entrySet().stream()
                .filter(unit -> judged.containsKey(unit.getKey()))
                .map(unit -> bond(
                        entry,
                        unit.getValue(),
                        reached.getOrDefault(unit.getKey(), List.of()),
                        Objects.requireNonNull(judged.get(unit.getKey()))))
                .toList();
    }

    private static BondVerdict bond(long entry, UnitName name, List<CuresOfUnits.Reached> cures, Judgement judgement) {
        String position = cures.stream()
                .filter(cure -> cure.entry() == entry)
                .findFirst()
                .map(CuresOfUnits.Reached::position)
                .orElse(null);
        return new BondVerdict(
                name, cures.stream().map(CuresOfUnits.Reached::run).toList(), position, judgement);
    }

    private Map<Long, UnitName> units(long entry, Run run) {
        Map<Long, UnitName> units = new LinkedHashMap<>();
        jdbc.sql("""
                        SELECT u.id, i.number, u.serial, u.issuer FROM cure.run_unit m
                        JOIN production.unit u ON u.id = m.unit JOIN catalog.item i ON i.id = u.item
                        WHERE m.entry = ? ORDER BY i.number, u.serial
                        """).param(entry).query(row -> {
            units.put(row.getLong(1), new UnitName(row.getString(2), row.getString(3), row.getString(4)));
        });
        List<Long> onIt = jdbc.sql("SELECT carrier FROM cure.run_carrier WHERE entry = ?")
                .param(entry)
                .query(Long.class)
                .list();
        carriers.unitsOn(onIt, run.startedAt(), run.endedAt()).forEach(units::putIfAbsent);
        return units;
    }
}
