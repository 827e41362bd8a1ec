package dev.sunthread.production;

import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.EarlierEntries;
import dev.sunthread.ledger.Fact;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;

/** What must hold of a unit and its parent, with all that they are built together with, when one goes into the other. */
@Component
class JoinRules {

    private static final String REMEDY =
            "Record the removal that was missed, or void the installation that is wrong";

    private final AssemblyRules assemblies;
    private final HeldAssemblies held;
    private final RouteOrder order;
    private final Prerequisites prerequisites;
    private final EarlierEntries earlier;

    JoinRules(
            AssemblyRules assemblies,
            HeldAssemblies held,
            RouteOrder order,
            Prerequisites prerequisites,
            EarlierEntries earlier) {
        this.assemblies = assemblies;
        this.held = held;
        this.order = order;
        this.prerequisites = prerequisites;
        this.earlier = earlier;
    }

    /** Nothing in either is on hold, and the child has been through its route. */
    void mayBeJoined(Fact<InstallationKind.Body> fact, Children.Child child, long parent) {
        Map<Long, UnitName> both = new LinkedHashMap<>(Map.of(parent, fact.body().parent()));
        UnitName name = fact.body().child().unit();
        if (child.unit() != null && name != null) {
            both.put(child.unit(), name);
        }
        assemblies.nothingBuiltTogetherIsOnHold(fact, both, true);
        if (child.unit() != null && name != null) {
            order.routeIsDone(fact, Map.of(child.unit(), name));
            prerequisites.unitsHaveAllThatIsDemanded(fact, Map.of(child.unit(), name));
        }
        held.joined(both.keySet());
    }

    /** Says who was first where a child is put in that is elsewhere then, or a position is filled that is taken. */
    void isTaken(Fact<InstallationKind.Body> fact, Children.Child child, long parent, List<Stays.Stay> before) {
        TraceRef[] about = {child.ref(), TraceRef.unit(parent)};
        before.stream()
                .filter(stay -> child.unit() != null && child.unit().equals(stay.child()))
                .findFirst()
                .ifPresentOrElse(
                        elsewhere -> nothingIsInTwoPlaces(fact, elsewhere, about),
                        () -> before.stream().findFirst().ifPresent(first -> positionHoldsOneThing(fact, first, about)));
    }

    private void nothingIsInTwoPlaces(Fact<InstallationKind.Body> fact, Stays.Stay elsewhere, TraceRef[] about) {
        fact.breaks(
                "nothing-is-in-two-places",
                "Unit " + fact.body().child().unit() + " is recorded as being in " + elsewhere.place()
                        + " at that time, put there " + earlier.words(elsewhere.entry(), fact.occurredAt()),
                REMEDY,
                about);
    }

    private void positionHoldsOneThing(Fact<InstallationKind.Body> fact, Stays.Stay first, TraceRef[] about) {
        String position = fact.body().position() + " of " + fact.body().parent();
        fact.breaks(
                "position-holds-one-thing",
                "Position " + position + " is recorded as holding " + first.what() + " at that time, put there "
                        + earlier.words(first.entry(), fact.occurredAt()),
                REMEDY,
                about);
    }
}
