package dev.sunthread.production;

import dev.sunthread.holds.Holds;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.SoleWriter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What is on hold of all that units are built together with: inside them, around them, and the lots in any of these. */
@Repository
class HeldAssemblies {

    private static final String UNITS = "units";
    private static final String LOTS = "lots";

    private final SoleWriter sole;
    private final JdbcClient jdbc;

    HeldAssemblies(SoleWriter sole, JdbcClient jdbc) {
        this.sole = sole;
        this.jdbc = jdbc;
    }

    /**
     * What is on hold of all that these units are built together with when something happens to them, but for themselves
     * and for the material that this very happening takes in.
     *
     * @param whole whether all that is in the same outermost parent counts, or only what the unit is in and what is in it
     */
    List<HeldPart> of(Fact<?> fact, Collection<Long> units, boolean whole) {
        List<HeldPart> held = new ArrayList<>();
        if (unitsMayBeTouched(units)) {
            held.addAll(read(AssemblyHolds.HELD_UNITS, fact, units, whole));
        }
        if (anyLotIsHeld()) {
            held.addAll(read(AssemblyHolds.HELD_LOTS, fact, units, whole));
        }
        return held;
    }

    private List<HeldPart> read(String sql, Fact<?> fact, Collection<Long> units, boolean whole) {
        return jdbc.sql(sql)
                .param("units", units.toArray(Long[]::new))
                .param("at", fact.occurredAt())
                .param("entry", fact.entry())
                .param("whole", whole)
                .query(DataClassRowMapper.newInstance(HeldPart.class))
                .list();
    }

    /** Says that something was put into something by what is being recorded. */
    void joined(Collection<Long> units) {
        Set<Long> touched = memory().get(UNITS);
        if (touched != null && units.stream().anyMatch(touched::contains)) {
            memory().remove(UNITS);
        }
    }

    private boolean unitsMayBeTouched(Collection<Long> units) {
        if (!sole.isSole()) {
            return true;
        }
        Set<Long> touched = memory().computeIfAbsent(
                        UNITS,
                        any -> new HashSet<>(jdbc.sql(AssemblyHolds.TOUCHED)
                                .query(Long.class)
                                .list()));
        return units.stream().anyMatch(touched::contains);
    }

    private boolean anyLotIsHeld() {
        return !memory().computeIfAbsent(
                        LOTS,
                        any -> new HashSet<>(jdbc.sql(AssemblyHolds.ANY_LOT)
                                .query(Long.class)
                                .list()))
                .isEmpty();
    }

    private Map<String, Set<Long>> memory() {
        return sole.known(Holds.TOUCHED);
    }
}
