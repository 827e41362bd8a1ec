package dev.sunthread.production;

import dev.sunthread.holds.Holds;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import dev.sunthread.materials.Containers;
import dev.sunthread.materials.Lots;
import java.util.List;
import org.springframework.stereotype.Component;

/** Lots, containers or units may not move on, for one stated reason. */
@Component
class HoldKind implements Kind<HoldKind.Body> {

    record Body(
            @Field("The lots that may not be used") List<String> lots,
            @Field("The units that may not move on") List<UnitName> units,
            @Field("The containers that may not be used") List<String> containers,
            @Field(value = "Why", text = TextForm.NAME) String reason) {

        Body {
            if (lots.isEmpty() && units.isEmpty() && containers.isEmpty()) {
                throw new Contradiction(
                        "lots", ", units and containers are all missing", "Name at least one lot, unit or container");
            }
        }
    }

    private final Units units;
    private final Lots lots;
    private final Containers containers;
    private final Holds holds;

    HoldKind(Units units, Lots lots, Containers containers, Holds holds) {
        this.units = units;
        this.lots = lots;
        this.containers = containers;
        this.holds = holds;
    }

    @Override
    public String name() {
        return "hold";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "Lots, containers or units may not move on, for one stated reason; each hold is released by itself.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        body.lots().stream().distinct().forEach(lot -> holds.place(fact, TraceRef.lot(lots.known(lot)), body.reason()));
        units.known(body.units(), "body.units").forEach(unit -> holds.place(fact, TraceRef.unit(unit), body.reason()));
        body.containers().stream()
                .distinct()
                .forEach(label -> holds.place(fact, TraceRef.container(containers.known(label)), body.reason()));
    }
}
