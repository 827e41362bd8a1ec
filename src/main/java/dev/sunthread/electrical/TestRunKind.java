package dev.sunthread.electrical;

import dev.sunthread.catalog.ReleasedCodes;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.Unreadable;
import dev.sunthread.production.UnitName;
import dev.sunthread.production.Units;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** A unit was measured on equipment under a specification. */
@Component
class TestRunKind implements Kind<TestRunKind.Body> {

    record Body(
            @Field("The run's number") String run,
            @Field("The unit") UnitName unit,
            @Field("The specification") String specification,
            @Field("The equipment, such as a rig") String equipment,

            @Field("When it began; it ended when the envelope occurred. Absent if it took no time") @Nullable
            OffsetDateTime startedAt,

            @Field("What came out; invalid if the test itself went wrong")
            Verdict verdict,

            @Field("The raw points of its sweeps, as they came")
            List<Sweep> sweeps,

            @Field("What testers of insulation and ground path read, as it came")
            List<SafetyReading> readings) {}

    private final Units units;
    private final ReleasedCodes codes;
    private final TestRuns runs;
    private final TestRules rules;
    private final TestRecords records;

    TestRunKind(Units units, ReleasedCodes codes, TestRuns runs, TestRules rules, TestRecords records) {
        this.units = units;
        this.codes = codes;
        this.runs = runs;
        this.rules = rules;
        this.records = records;
    }

    @Override
    public String name() {
        return "test-run";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A unit was measured on equipment under a specification; every result is kept.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        OffsetDateTime start = startOf(fact);
        long unit = units.known(body.unit(), "body.unit");
        long specification = codes.specification(body.specification(), "body.specification");
        long equipment = codes.equipment(body.equipment(), "body.equipment");
        units.lock(List.of(unit));
        long run = runs.locked(body.run());
        Tested tested = new Tested(run, unit, specification, equipment);
        rules.before(fact, tested);
        records.record(fact, tested, start);
        rules.after(fact, tested);
    }

    private static OffsetDateTime startOf(Fact<Body> fact) {
        OffsetDateTime start = fact.body().startedAt();
        if (start != null && start.isAfter(fact.occurredAt())) {
            throw Unreadable.at(
                    "body.startedAt",
                    "is later than the envelope's occurredAt, when the test ended",
                    "Give a start not later than the end");
        }
        return start == null ? fact.occurredAt() : start;
    }
}
