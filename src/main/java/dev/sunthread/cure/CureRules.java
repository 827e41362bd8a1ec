package dev.sunthread.cure;

import dev.sunthread.catalog.EquipmentRules;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.production.UnitRules;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** What must hold before a load is cured. */
@Component
class CureRules {

    private final CureRuns runs;
    private final UnitRules unitRules;
    private final EquipmentRules equipmentRules;

    CureRules(CureRuns runs, UnitRules unitRules, EquipmentRules equipmentRules) {
        this.runs = runs;
        this.unitRules = unitRules;
        this.equipmentRules = equipmentRules;
    }

    void check(Fact<CureRunKind.Body> fact, long run, long equipment, Load load) {
        unitRules.unitsMayMoveOn(fact, load.names());
        runIsRecordedOnce(fact, run, load);
        nothingIsInALoadTwice(fact, "unit", load.units());
        nothingIsInALoadTwice(fact, "carrier", load.carriers());
        equipmentRules.equipmentWasGoodAtItsLastCheck(fact, fact.body().equipment(), equipment, null, load.refs());
    }

    private void runIsRecordedOnce(Fact<CureRunKind.Body> fact, long run, Load load) {
        if (runs.isRecorded(run)) {
            fact.breaks(
                    "cure-run-is-recorded-once",
                    "Cure run " + fact.body().run() + " was recorded before with another load",
                    "Give each load a number of its own, or void the record that is wrong",
                    Stream.concat(Stream.of(new TraceRef(TraceKind.CURE_RUN, run)), load.refs().stream())
                            .toArray(TraceRef[]::new));
        }
    }

    private static void nothingIsInALoadTwice(Fact<CureRunKind.Body> fact, String what, List<Load.Member> members) {
        if (members.stream().map(Load.Member::id).distinct().count() < members.size()) {
            fact.breaks(
                    "nothing-is-in-a-load-twice",
                    "Cure run " + fact.body().run() + " names a " + what + " twice; its first position is kept",
                    "Find out which position is right and correct the run");
        }
    }
}
