package dev.sunthread.production;

import dev.sunthread.catalog.Item;
import dev.sunthread.catalog.Items;
import dev.sunthread.catalog.Station;
import dev.sunthread.catalog.Stations;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Contradiction;
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
            List<Use> uses,

            @Field(value = "What was measured or set", atMost = 500)
            List<Value> values) {}

    /** Material that went into each of the step's units. */
    record Use(
            @Field("The item") String item,

            @Field("The lot, if its label was scanned") @Nullable
            String lot,

            @Field("The container it came from, if its label was scanned") @Nullable
            String container,

            @Field("The position of the station it came from, if known") @Nullable
            String position,

            @Field(value = "How much went into each unit", positive = true) @Nullable
            BigDecimal quantity,

            @Field("The unit of the quantity") @Nullable String unitOfMeasure) {

        Use {
            if ((quantity == null) != (unitOfMeasure == null)) {
                throw new Contradiction(
                        quantity == null ? "quantity" : "unitOfMeasure",
                        "is missing beside the other",
                        "Give quantity and unit together, or neither");
            }
        }
    }

    record Value(
            @Field("What it is") String name,
            @Field("Its value") BigDecimal value,
            @Field("Its unit") String unitOfMeasure) {}

    private final Units units;
    private final Items items;
    private final Stations stations;
    private final StepRules rules;
    private final UseRules useRules;
    private final JdbcClient jdbc;

    StepKind(Units units, Items items, Stations stations, StepRules rules, UseRules useRules, JdbcClient jdbc) {
        this.units = units;
        this.items = items;
        this.stations = stations;
        this.rules = rules;
        this.useRules = useRules;
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
        for (int i = 0; i < body.uses().size(); i++) {
            recordUse(fact, i, body.uses().get(i));
        }
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

    private void recordUse(Fact<Body> fact, int index, Use use) {
        String path = "body.uses[" + index + "]";
        Item item = items.named(use.item(), path + ".item");
        Long position = use.position() == null
                ? null
                : stations.position(fact.body().station(), use.position(), path + ".position")
                        .id();
        Long lot = use.lot() == null ? null : useRules.scanned(fact, use.lot(), position);
        jdbc.sql("""
                        INSERT INTO production.step_use
                          (entry, ordinal, item, lot, container, position, quantity, unit_of_measure)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(fact.entry(), index + 1, item.id())
                .param(lot)
                .param(useRules.container(use.container()))
                .param(position)
                .param(use.quantity())
                .param(use.unitOfMeasure())
                .update();
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
