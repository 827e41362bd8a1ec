package dev.sunthread.production;

import dev.sunthread.catalog.Structures;
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
    private final JoinRules joinRules;
    private final TakenPlaces takenPlaces;

    InstallationRules(
            UnitRules unitRules,
            Children children,
            Structures structures,
            JoinRules joinRules,
            TakenPlaces takenPlaces) {
        this.unitRules = unitRules;
        this.children = children;
        this.structures = structures;
        this.joinRules = joinRules;
        this.takenPlaces = takenPlaces;
    }

    /** What must hold before. */
    void before(Fact<InstallationKind.Body> fact, Children.Child child, long parent) {
        InstallationKind.Body body = fact.body();
        unitRules.unitsMayMoveOn(fact, Map.of(parent, body.parent()));
        children.partMayBeTaken(fact, body.child());
        if (body.child().unit() != null && child.unit() != null) {
            unitRules.heldChildHoldsItsParent(fact, body.child().unit(), child.unit(), parent);
        }
        positionTakesTheItem(fact, child, parent);
        joinRules.mayBeJoined(fact, child, parent);
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
            takenPlaces.isTaken(fact, child, parent);
        }
    }
}
