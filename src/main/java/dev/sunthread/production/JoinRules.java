package dev.sunthread.production;

import dev.sunthread.ledger.Fact;
import java.util.LinkedHashMap;
import java.util.Map;
import org.springframework.stereotype.Component;

/** What must hold of a unit and its parent, with all that they are built together with, when one goes into the other. */
@Component
class JoinRules {

    private final AssemblyRules assemblies;
    private final HeldAssemblies held;
    private final RouteOrder order;
    private final Prerequisites prerequisites;

    JoinRules(AssemblyRules assemblies, HeldAssemblies held, RouteOrder order, Prerequisites prerequisites) {
        this.assemblies = assemblies;
        this.held = held;
        this.order = order;
        this.prerequisites = prerequisites;
    }

    /** Nothing in either is on hold, and the child has been through its route. */
    void mayBeJoined(Fact<InstallationKind.Body> fact, Children.Child child, long parent) {
        Map<Long, UnitName> both =
                new LinkedHashMap<>(Map.of(parent, fact.body().parent()));
        UnitName name = fact.body().child().unit();
        if (child.unit() != null && name != null) {
            both.put(child.unit(), name);
        }
        assemblies.nothingBuiltTogetherIsOnHold(fact, both, true);
        if (child.unit() != null && name != null) {
            prerequisites.joinedUnitHasWhatIsDemanded(fact, child.unit(), name);
            order.routeIsDone(fact, Map.of(child.unit(), name));
        }
        held.joined(both.keySet());
    }
}
