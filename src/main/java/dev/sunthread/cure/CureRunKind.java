package dev.sunthread.cure;

import dev.sunthread.catalog.ReleasedCodes;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.Unreadable;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** A load was cured by a recipe in equipment. */
@Component
class CureRunKind implements Kind<CureRunKind.Body> {

    record Body(
            @Field("The run's number") String run,
            @Field("The recipe") String recipe,

            @Field("The equipment, such as an oven or a lamp")
            String equipment,

            @Field("When it began; it ended when the envelope occurred")
            OffsetDateTime startedAt,

            @Field("The units in the load by themselves") List<CuredUnit> units,

            @Field("The carriers in the load, with all that was on them")
            List<CuredCarrier> carriers,

            @Field("What sensors measured meanwhile") List<Series> profile) {}

    record CuredUnit(
            @Field("The unit's item") String item,

            @Field("The serial, as written: case and leading zeros count")
            String serial,

            @Field("Who issued the serial; absent for this plant") @Nullable
            String issuer,

            @Field("The position in the equipment, if known") @Nullable
            String position) {}

    record CuredCarrier(
            @Field("The carrier") String carrier,

            @Field("The position in the equipment, if known") @Nullable
            String position) {}

    private final CureRuns runs;
    private final ReleasedCodes codes;
    private final Loads loads;
    private final CureRules rules;
    private final Profiles profiles;
    private final CureFindings findings;

    CureRunKind(
            CureRuns runs,
            ReleasedCodes codes,
            Loads loads,
            CureRules rules,
            Profiles profiles,
            CureFindings findings) {
        this.runs = runs;
        this.codes = codes;
        this.loads = loads;
        this.rules = rules;
        this.profiles = profiles;
        this.findings = findings;
    }

    @Override
    public String name() {
        return "cure-run";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A load of units and carriers was cured by a recipe in equipment, with all that was inside and on them.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        runDoesNotEndBeforeItBegins(fact);
        long recipe = codes.recipe(body.recipe(), "body.recipe");
        long equipment = codes.equipment(body.equipment(), "body.equipment");
        Load load = loads.known(fact);
        long run = runs.locked(body.run());
        rules.check(fact, run, equipment, load);
        Loads.Run told = new Loads.Run(run, recipe, equipment);
        loads.record(fact, told, load);
        profiles.record(fact.entry(), body.profile());
        ReadingTimes.lieWithinTheRun(fact, run);
        findings.judge(fact, told, load);
    }

    private static void runDoesNotEndBeforeItBegins(Fact<Body> fact) {
        if (fact.body().startedAt().isAfter(fact.occurredAt())) {
            throw Unreadable.at(
                    "body.startedAt",
                    "is later than the envelope's occurredAt, when the run ended",
                    "Give a start not later than the end");
        }
    }
}
