package dev.sunthread.production;

import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import java.util.List;
import java.util.Map;
import java.util.Set;
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
    private final Prerequisites prerequisites;
    private final JdbcClient jdbc;

    ShipmentKind(Units units, UnitRules rules, Stays stays, Prerequisites prerequisites, JdbcClient jdbc) {
        this.units = units;
        this.rules = rules;
        this.stays = stays;
        this.prerequisites = prerequisites;
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
        rules.unitsMayMoveOn(fact, shipped);
        prerequisites.leavingUnitsHaveWhatIsDemanded(fact, shipped);
        onlyOutermostUnitsAreShipped(fact, shipped);
        jdbc.sql("INSERT INTO production.shipment_unit (entry, unit) SELECT ?, unnest(?)")
                .params(fact.entry(), shipped.keySet().toArray(Long[]::new))
                .update();
    }

    private void onlyOutermostUnitsAreShipped(Fact<Body> fact, Map<Long, UnitName> shipped) {
        Set<Long> inside = stays.insideAny(shipped.keySet(), fact.occurredAt());
        shipped.forEach((unit, name) -> {
            if (inside.contains(unit)) {
                fact.breaks(
                        "only-outermost-units-are-shipped",
                        "Unit " + name + " was shipped while recorded as being inside another",
                        "Ship the outermost unit, or record the removal that was missed",
                        TraceRef.unit(unit));
            }
        });
    }
}
