package dev.sunthread.production;

import dev.sunthread.holds.Holds;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.ledger.SoleWriter;
import java.util.Collection;
import org.springframework.stereotype.Component;

/** Tells those who keep something of units that a unit is new, so that they need not ask what is recorded of it. */
@Component
class NewUnits {

    private final SoleWriter sole;
    private final UnitLives lives;
    private final OperationEnds ends;
    private final Holds holds;

    NewUnits(SoleWriter sole, UnitLives lives, OperationEnds ends, Holds holds) {
        this.sole = sole;
        this.lives = lives;
        this.ends = ends;
        this.holds = holds;
    }

    /** Says that the current transaction made units; only one that records alone can know that nobody else did. */
    void areMade(Collection<Long> units) {
        if (sole.isSole()) {
            lives.begin(units);
            ends.begin(units);
            holds.begin(TraceKind.UNIT, units);
        }
    }
}
