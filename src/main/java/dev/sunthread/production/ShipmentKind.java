package dev.sunthread.production;

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
    private final ShipmentRules rules;
    private final JdbcClient jdbc;

    ShipmentKind(Units units, ShipmentRules rules, JdbcClient jdbc) {
        this.units = units;
        this.rules = rules;
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
        rules.unitsMayBeShipped(fact, shipped);
        jdbc.sql("INSERT INTO production.shipment_unit (entry, unit) SELECT ?, unnest(?)")
                .params(fact.entry(), shipped.keySet().toArray(Long[]::new))
                .update();
    }
}
