package dev.sunthread.production;

import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.materials.Containers;
import dev.sunthread.materials.Lots;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.stereotype.Component;

/** The lots, units and containers that one decision is about, each once; one that nothing named before is noted or refused. */
@Component
class DecidedThings {

    private final Units units;
    private final Lots lots;
    private final Containers containers;
    private final KnownNames names;

    DecidedThings(Units units, Lots lots, Containers containers, KnownNames names) {
        this.units = units;
        this.lots = lots;
        this.containers = containers;
        this.names = names;
    }

    Set<TraceRef> lots(Fact<?> fact, List<String> numbers) {
        Set<TraceRef> things = new LinkedHashSet<>();
        numbers.forEach(number -> {
            long lot = lots.known(number);
            names.ofLot(fact, lot, number);
            things.add(TraceRef.lot(lot));
        });
        return things;
    }

    Set<TraceRef> units(Fact<?> fact, List<UnitName> named) {
        Map<Long, UnitName> known = units.knownOnce(named, "body.units");
        names.ofUnits(fact, known);
        Set<TraceRef> things = new LinkedHashSet<>();
        known.keySet().forEach(unit -> things.add(TraceRef.unit(unit)));
        return things;
    }

    Set<TraceRef> containers(Fact<?> fact, List<String> labels) {
        Set<TraceRef> things = new LinkedHashSet<>();
        labels.forEach(label -> {
            long container = containers.known(label);
            names.ofContainer(fact, container, label);
            things.add(TraceRef.container(container));
        });
        return things;
    }
}
