package dev.sunthread.production;

import dev.sunthread.catalog.Item;
import dev.sunthread.catalog.Items;
import dev.sunthread.catalog.Stations;
import dev.sunthread.catalog.Tracking;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.Unreadable;
import java.math.BigDecimal;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Parts or material were taken out of a unit into a lot. */
@Component
class RecoveryKind implements Kind<RecoveryKind.Body> {

    record Body(
            @Field("The unit they were taken out of") UnitName unit,
            @Field("The lot they went into") String lot,

            @Field("The item of the lot, if it is known") @Nullable
            String item,

            @Field(value = "How much was taken out", positive = true) @Nullable
            BigDecimal quantity,

            @Field("The unit of the quantity") @Nullable String unitOfMeasure,

            @Field("The station where it was done") @Nullable
            String station) {

        Body {
            if ((quantity == null) != (unitOfMeasure == null)) {
                throw new Contradiction(
                        quantity == null ? "quantity" : "unitOfMeasure",
                        "is missing beside the other",
                        "Give quantity and unit together, or neither");
            }
        }
    }

    private final Units units;
    private final UnitRules rules;
    private final Items items;
    private final Stations stations;
    private final Recoveries recoveries;

    RecoveryKind(Units units, UnitRules rules, Items items, Stations stations, Recoveries recoveries) {
        this.units = units;
        this.rules = rules;
        this.items = items;
        this.stations = stations;
        this.recoveries = recoveries;
    }

    @Override
    public String name() {
        return "recovery";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "Parts or material were taken out of a unit into a lot; the lot carries on what the unit had got.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        long unit = units.known(body.unit(), "body.unit");
        Item item = body.item() == null ? null : items.named(body.item(), "body.item");
        if (item != null) {
            itemIsOfALot(item);
            quantityIsInTheItemsUnit(item, body);
        }
        Long station = stations.idOf(body.station(), "body.station");
        rules.unitsAreBorn(fact, Map.of(unit, body.unit()));
        recoveries.record(fact, unit, item, station);
    }

    private static void itemIsOfALot(Item item) {
        if (item.tracking() == Tracking.SERIAL) {
            throw Unreadable.at(
                    "body.item",
                    "names item \"" + item.number() + "\", which is tracked by serial",
                    "Record the removal of each unit instead");
        }
    }

    private static void quantityIsInTheItemsUnit(Item item, Body body) {
        if (body.unitOfMeasure() != null && !item.unitOfMeasure().equals(body.unitOfMeasure())) {
            throw Unreadable.at(
                    "body.unitOfMeasure",
                    "is \"" + body.unitOfMeasure() + "\" where the item has \"" + item.unitOfMeasure() + "\"",
                    "Give the quantity in the item's unit");
        }
    }
}
