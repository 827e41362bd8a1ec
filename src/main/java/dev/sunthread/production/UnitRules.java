package dev.sunthread.production;

import dev.sunthread.holds.Holds;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import org.springframework.stereotype.Component;

/** What must hold of a unit before something is done with it. */
@Component
class UnitRules {

    private final Units units;
    private final Holds holds;

    UnitRules(Units units, Holds holds) {
        this.units = units;
        this.holds = holds;
    }

    void unitIsBorn(Fact<?> fact, UnitName name, long unit) {
        if (!units.isBorn(unit)) {
            fact.breaks(
                    "unit-is-born",
                    "Unit " + name + " has no birth record",
                    "Record its birth, or correct the serial",
                    TraceRef.unit(unit));
        }
    }

    /** Whether the unit is free; what holds it is noted or refused. */
    boolean unitIsNotOnHold(Fact<?> fact, UnitName name, long unit) {
        var open = holds.on(TraceRef.unit(unit));
        open.forEach(hold -> fact.breaks(
                "unit-is-not-on-hold",
                "Unit " + name + " is on hold: " + hold.reason(),
                "Set it aside and ask quality",
                TraceRef.unit(unit)));
        return open.isEmpty();
    }
}
