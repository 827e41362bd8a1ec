package dev.sunthread.production;

import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import java.util.List;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Units left the plant for a consignee, with all inside them. */
@Component
class ShipmentKind implements Kind<ShipmentKind.Body> {

    record Body(
            @Field("The shipment's number") String shipment,
            @Field("Who it went to") String consignee,

            @Field(value = "The outermost units that were shipped", atLeast = 1)
            List<UnitName> units) {}

    private final Units units;
    private final UnitRules rules;
    private final Stays stays;
    private final JdbcClient jdbc;

    ShipmentKind(Units units, UnitRules rules, Stays stays, JdbcClient jdbc) {
        this.units = units;
        this.rules = rules;
        this.stays = stays;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "shipment";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "Units left the plant for a consignee, with all that is inside them.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        jdbc.sql("INSERT INTO production.shipment (entry, number, consignee, shipped_at) VALUES (?, ?, ?, ?)")
                .params(fact.entry(), body.shipment(), body.consignee(), fact.occurredAt())
                .update();
        Map<Long, UnitName> shipped = units.knownOnce(body.units(), "body.units");
        units.lock(shipped.keySet());
        shipped.forEach((unit, name) -> {
            unitMayBeShipped(fact, name, unit);
            jdbc.sql("INSERT INTO production.shipment_unit (entry, unit) VALUES (?, ?)")
                    .params(fact.entry(), unit)
                    .update();
        });
    }

    private void unitMayBeShipped(Fact<Body> fact, UnitName name, long unit) {
        rules.unitIsBorn(fact, name, unit);
        rules.unitIsNotOnHold(fact, name, unit);
        if (stays.isInsideAny(unit, fact.occurredAt())) {
            fact.breaks(
                    "only-outermost-units-are-shipped",
                    "Unit " + name + " was shipped while recorded as being inside another",
                    "Ship the outermost unit, or record the removal that was missed",
                    TraceRef.unit(unit));
        }
    }
}
