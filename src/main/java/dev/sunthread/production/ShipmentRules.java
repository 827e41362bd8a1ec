package dev.sunthread.production;

import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import java.util.Map;
import java.util.Set;
import org.springframework.stereotype.Component;

/** What must hold of units that are shipped. */
@Component
class ShipmentRules {

    private final UnitRules unitRules;
    private final Stays stays;
    private final Prerequisites prerequisites;
    private final AssemblyRules assemblies;
    private final RouteOrder order;

    ShipmentRules(
            UnitRules unitRules, Stays stays, Prerequisites prerequisites, AssemblyRules assemblies, RouteOrder order) {
        this.unitRules = unitRules;
        this.stays = stays;
        this.prerequisites = prerequisites;
        this.assemblies = assemblies;
        this.order = order;
    }

    void unitsMayBeShipped(Fact<?> fact, Map<Long, UnitName> shipped) {
        unitRules.unitsMayMoveOn(fact, shipped);
        prerequisites.shippedUnitsHaveWhatIsDemanded(fact, shipped);
        onlyOutermostUnitsAreShipped(fact, shipped);
        assemblies.nothingBuiltTogetherIsOnHold(fact, shipped, true);
        order.routeIsDone(fact, shipped);
    }

    private void onlyOutermostUnitsAreShipped(Fact<?> fact, Map<Long, UnitName> shipped) {
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
