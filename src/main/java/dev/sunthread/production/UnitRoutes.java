package dev.sunthread.production;

import dev.sunthread.catalog.Items;
import dev.sunthread.catalog.RouteStep;
import dev.sunthread.catalog.RouteSteps;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.List;
import org.springframework.stereotype.Component;

/** The released routes by which units are built. */
@Component
class UnitRoutes {

    private final Items items;
    private final RouteSteps steps;

    UnitRoutes(Items items, RouteSteps steps) {
        this.items = items;
        this.steps = steps;
    }

    /** The route of a unit in force at a time; nothing if none was. */
    List<RouteStep> of(UnitName unit, OffsetDateTime at) {
        return of(unit.item(), at);
    }

    /** An operation as each route says it by which one of these units is built; nothing where a route lacks it. */
    List<RouteStep> steps(Collection<UnitName> units, String operation, OffsetDateTime at) {
        return units.stream()
                .map(UnitName::item)
                .distinct()
                .flatMap(item -> of(item, at).stream())
                .filter(step -> step.operation().equals(operation))
                .toList();
    }

    private List<RouteStep> of(String item, OffsetDateTime at) {
        return steps.of(items.find(item).orElseThrow().id(), at);
    }
}
