package dev.sunthread.production;

import dev.sunthread.holds.Holds;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import java.util.List;
import java.util.Set;
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

    private final DecidedThings things;
    private final Holds holds;

    HoldKind(DecidedThings things, Holds holds) {
        this.things = things;
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
        place(fact, things.lots(fact, body.lots()));
        place(fact, things.units(fact, body.units()));
        place(fact, things.containers(fact, body.containers()));
    }

    private void place(Fact<Body> fact, Set<TraceRef> held) {
        held.forEach(thing -> holds.place(fact, thing, fact.body().reason()));
    }
}
