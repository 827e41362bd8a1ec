package dev.sunthread.production;

import dev.sunthread.catalog.Station;
import dev.sunthread.catalog.Stations;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.Unreadable;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
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
    private final JdbcClient jdbc;

    StepKind(Units units, Stations stations, StepRules rules, StepUses uses, JdbcClient jdbc) {
        this.units = units;
        this.stations = stations;
        this.rules = rules;
        this.uses = uses;
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
        jdbc.sql("INSERT INTO production.step (entry, operation, station, started_at, ended_at) VALUES (?, ?, ?, ?, ?)")
                .params(fact.entry(), body.operation(), station.id(), start, fact.occurredAt())
                .update();
        recordUnits(fact, units.knownOnce(body.units(), "body.units"));
        uses.record(fact);
        body.values().forEach(value -> recordValue(fact.entry(), value));
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

    private void recordUnits(Fact<Body> fact, Map<Long, UnitName> worked) {
        jdbc.sql("INSERT INTO production.step_unit (entry, unit) SELECT ?, unnest(?)")
                .params(fact.entry(), worked.keySet().toArray(Long[]::new))
                .update();
        rules.unitsMayBeWorkedOn(fact, worked);
    }

    private void recordValue(long entry, Value value) {
        int recorded = jdbc.sql("""
                        INSERT INTO production.step_value (entry, name, value, unit_of_measure) VALUES (?, ?, ?, ?)
                        ON CONFLICT DO NOTHING
                        """)
                .params(entry, value.name(), value.value(), value.unitOfMeasure())
                .update();
        if (recorded == 0) {
            throw Unreadable.at(
                    "body.values", "names \"" + value.name() + "\" twice", "Give each value a name of its own");
        }
    }
}
