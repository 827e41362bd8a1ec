package dev.sunthread.electrical;

import dev.sunthread.catalog.Demand;
import dev.sunthread.catalog.EquipmentRules;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.production.UnitRules;
import dev.sunthread.production.UnitWentOn;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;

/** What must hold of a test of a unit. */
@Component
class TestRules {

    private final TestRuns runs;
    private final Retests retests;
    private final UnitRules unitRules;
    private final EquipmentRules equipmentRules;
    private final TestFindings findings;
    private final UnitWentOn wentOn;

    TestRules(
            TestRuns runs,
            Retests retests,
            UnitRules unitRules,
            EquipmentRules equipmentRules,
            TestFindings findings,
            UnitWentOn wentOn) {
        this.wentOn = wentOn;
        this.runs = runs;
        this.retests = retests;
        this.unitRules = unitRules;
        this.equipmentRules = equipmentRules;
        this.findings = findings;
    }

    void before(Fact<TestRunKind.Body> fact, Tested tested) {
        unitRules.unitsMayMoveOn(fact, Map.of(tested.unit(), fact.body().unit()));
        runIsRecordedOnce(fact, tested);
        equipmentRules.equipmentWasGoodAtItsLastCheck(
                fact,
                fact.body().equipment(),
                tested.equipment(),
                tested.specification(),
                List.of(TraceRef.unit(tested.unit())));
    }

    private void runIsRecordedOnce(Fact<TestRunKind.Body> fact, Tested tested) {
        if (runs.isRecorded(tested.run())) {
            fact.breaks(
                    "test-run-is-recorded-once",
                    "Test run " + fact.body().run() + " was recorded before",
                    "Give each test a number of its own, or void the record that is wrong",
                    new TraceRef(TraceKind.TEST_RUN, tested.run()),
                    TraceRef.unit(tested.unit()));
        }
    }

    /** What must hold once it is in history. */
    void after(Fact<TestRunKind.Body> fact, Tested tested) {
        long unit = tested.unit();
        if (!findings.judge(fact, unit)) {
            wentOn.afterARunThatDoesNotStand(
                    fact,
                    Demand.Way.TEST,
                    tested.specification(),
                    Map.of(unit, fact.body().unit()));
        }
        if (retests.passedAfterFailureWithoutWork(fact.entry())) {
            fact.breaks(
                    "no-unit-is-tested-until-it-passes",
                    "Unit " + fact.body().unit() + " failed test " + fact.body().specification()
                            + " and passed it next with nothing recorded as done to it between",
                    "Record what was done to it; if nothing was, find out which result is right",
                    TraceRef.unit(unit));
        }
    }
}
