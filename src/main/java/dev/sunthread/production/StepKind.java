package dev.sunthread.production;

import dev.sunthread.catalog.Station;
import dev.sunthread.catalog.Stations;
import dev.sunthread.kernel.Digits;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.Unreadable;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** An operation was done on units at a station, taking in material. */
@Component
class StepKind implements Kind<StepKind.Body> {

    record Body(
            @Field("The operation, by its code in the route")
            String operation,

            @Field("The station") String station,

            @Field(value = "The units it was done on", atLeast = 1)
            List<UnitName> units,

            @Field("When it began; it ended when the envelope occurred. Absent if it took no time") @Nullable
            OffsetDateTime startedAt,

            @Field(value = "The material it took in", atMost = 200)
            List<StepUse> uses,

            @Field(value = "What was measured or set", atMost = 500)
            List<Value> values) {}

    record Value(
            @Field("What it is") String name,
            @Field("Its value") BigDecimal value,
            @Field("Its unit") String unitOfMeasure) {}

    private final Units units;
    private final Stations stations;
    private final StepRules rules;
    private final StepUses uses;
    private final OperationEnds ends;
    private final JdbcClient jdbc;

    StepKind(Units units, Stations stations, StepRules rules, StepUses uses, OperationEnds ends, JdbcClient jdbc) {
        this.units = units;
        this.stations = stations;
        this.rules = rules;
        this.uses = uses;
        this.ends = ends;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "step";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "An operation was done on units at a station; what it took in went into each of them.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        Station station = stations.named(body.station(), "body.station");
        OffsetDateTime start = startOf(fact);
        Map<Long, UnitName> worked = units.knownOnce(body.units(), "body.units");
        jdbc.sql("""
                        WITH step AS (
                          INSERT INTO production.step (entry, operation, station, started_at, ended_at)
                          VALUES (:entry, :operation, :station, :start, :end))
                        INSERT INTO production.step_unit (entry, unit) SELECT :entry, unnest(:units)
                        """)
                .param("entry", fact.entry())
                .param("operation", body.operation())
                .param("station", station.id())
                .param("start", start)
                .param("end", fact.occurredAt())
                .param("units", worked.keySet().toArray(Long[]::new))
                .update();
        ends.add(fact.entry(), body.operation(), worked.keySet(), start, fact.occurredAt());
        rules.unitsMayBeWorkedOn(fact, worked);
        List<TakenInRules.Taken> taken = uses.record(fact);
        recordValues(fact.entry(), body.values());
        rules.operationMayBeDone(fact, worked, taken, start);
    }

    private static OffsetDateTime startOf(Fact<Body> fact) {
        OffsetDateTime start = fact.body().startedAt();
        if (start != null && start.isAfter(fact.occurredAt())) {
            throw Unreadable.at(
                    "body.startedAt",
                    "is later than the envelope's occurredAt, when the step ended",
                    "Give a start not later than the end");
        }
        return start == null ? fact.occurredAt() : start;
    }

    private void recordValues(long entry, List<Value> values) {
        eachValueHasANameOfItsOwn(values);
        if (!values.isEmpty()) {
            jdbc.sql("""
                            INSERT INTO production.step_value (entry, name, value, unit_of_measure)
                            SELECT ?, v.name, v.value, v.unit_of_measure
                            FROM unnest(cast(? AS text[]), cast(? AS numeric[]), cast(? AS text[]))
                              AS v (name, value, unit_of_measure)
                            """)
                    .param(entry)
                    .param(values.stream().map(Value::name).toArray(String[]::new))
                    .param(Digits.of(values.stream().map(Value::value).toList()))
                    .param(values.stream().map(Value::unitOfMeasure).toArray(String[]::new))
                    .update();
        }
    }

    private static void eachValueHasANameOfItsOwn(List<Value> values) {
        Set<String> names = new HashSet<>();
        for (Value value : values) {
            if (!names.add(value.name())) {
                throw Unreadable.at(
                        "body.values", "names \"" + value.name() + "\" twice", "Give each value a name of its own");
            }
        }
    }
}
