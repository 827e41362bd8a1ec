package dev.sunthread.production;

import dev.sunthread.catalog.Structures;
import dev.sunthread.holds.Holds;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import java.util.Map;
import org.springframework.stereotype.Component;

/** What must hold when something is put into a parent. */
@Component
class InstallationRules {

    private final UnitRules unitRules;
    private final Children children;
    private final Structures structures;
    private final Stays stays;
    private final Holds holds;
    private final Prerequisites prerequisites;

    InstallationRules(
            UnitRules unitRules,
            Children children,
            Structures structures,
            Stays stays,
            Holds holds,
            Prerequisites prerequisites) {
        this.prerequisites = prerequisites;
        this.unitRules = unitRules;
        this.children = children;
        this.structures = structures;
        this.stays = stays;
        this.holds = holds;
    }

    /** What must hold before; gives the parent's position. */
    long before(Fact<InstallationKind.Body> fact, Children.Child child, long parent) {
        InstallationKind.Body body = fact.body();
        unitRules.unitsMayMoveOn(fact, Map.of(parent, body.parent()));
        children.partMayBeTaken(fact, body.child());
        if (body.child().unit() != null && child.unit() != null) {
            heldChildHoldsItsParent(fact, body.child().unit(), child.unit(), parent);
            prerequisites.leavingUnitsHaveWhatIsDemanded(
                    fact, Map.of(child.unit(), body.child().unit()));
        }
        positionTakesTheItem(fact, child, parent);
        return stays.position(parent, body.position());
    }

    private void heldChildHoldsItsParent(Fact<InstallationKind.Body> fact, UnitName name, long child, long parent) {
        if (unitRules.unitsMayMoveOn(fact, Map.of(child, name)).contains(child)) {
            holds.place(fact, TraceRef.unit(parent), "Unit " + name + " was put into it while on hold");
        }
    }

    private void positionTakesTheItem(Fact<InstallationKind.Body> fact, Children.Child child, long parent) {
        Long parentItem = children.itemOf(fact.body().parent());
        Long childItem = children.itemOf(fact.body().child(), child);
        String position = fact.body().position();
        if (parentItem != null
                && childItem != null
                && structures.places(parentItem, position, childItem, fact.occurredAt()) == Structures.Allowed.NO) {
            fact.breaks(
                    "position-takes-the-item",
                    "The structure of item " + fact.body().parent().item()
                            + " in force then has no place for this item at " + position,
                    "Correct position or item, or release a structure that allows it",
                    child.ref(),
                    TraceRef.unit(parent));
        }
    }

    /** What must hold once it is in history: nothing is in two places, and no position holds two things. */
    void after(Fact<InstallationKind.Body> fact, Children.Child child, long parent, boolean applied) {
        if (!applied) {
            fact.breaks(
                    "nothing-is-in-two-places",
                    "It is recorded as being elsewhere at that time, or position "
                            + fact.body().position() + " of " + fact.body().parent() + " as occupied",
                    "Record the removal that was missed, or void the installation that is wrong",
                    child.ref(),
                    TraceRef.unit(parent));
        }
    }
}
