package dev.sunthread.production;

import dev.sunthread.catalog.Item;
import dev.sunthread.catalog.RouteStep;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.materials.Charges;
import dev.sunthread.materials.ContainerRules;
import dev.sunthread.materials.Loaded;
import dev.sunthread.materials.LotRules;
import dev.sunthread.materials.Lots;
import java.util.Collection;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** What must hold of material that a step took in, whether its label was scanned or it is recorded as loaded. */
@Component
class TakenInRules {

    /** A use by what the database knows of it. */
    record Taken(
            Item item,
            @Nullable Long lot,
            @Nullable Long container,
            @Nullable Long position) {

        /** Whether the position alone says what it was. */
        boolean isUnscanned() {
            return lot == null && container == null && position != null;
        }
    }

    private final Lots lots;
    private final LotRules lotRules;
    private final ContainerRules containerRules;
    private final Charges charges;

    TakenInRules(Lots lots, LotRules lotRules, ContainerRules containerRules, Charges charges) {
        this.lots = lots;
        this.lotRules = lotRules;
        this.containerRules = containerRules;
        this.charges = charges;
    }

    /** Asked of every route by which a unit of the step is built. */
    void materialIsWhatTheOperationTakesIn(
            Fact<StepKind.Body> fact, Collection<RouteStep> steps, Collection<Taken> uses) {
        uses.forEach(use -> steps.forEach(step -> takenInItemIsOneThatTheOperationConsumes(fact, step, use)));
    }

    void materialMayBeUsed(Fact<StepKind.Body> fact, Taken use) {
        String operation = fact.body().operation();
        Long lot = use.lot();
        Loaded loaded = use.position() == null
                ? null
                : charges.at(use.position(), fact.occurredAt()).orElse(null);
        if (lot != null) {
            lotRules.lotIsNotExpired(fact, lots.number(lot), lot, operation);
        } else if (loaded != null) {
            lot = loaded.lot();
            lotRules.loadedLotMayBeUsed(fact, lot, operation);
        }
        if (lot != null) {
            lotIsOfTheItemTakenIn(fact, use, lot);
        }
        Long container = containerOf(use, lot, loaded);
        if (container != null) {
            containerRules.containerMayBeUsed(fact, container, use.item().id(), operation);
        }
    }

    private static @Nullable Long containerOf(Taken use, @Nullable Long lot, @Nullable Loaded loaded) {
        if (use.container() != null || loaded == null || lot == null || loaded.lot() != lot) {
            return use.container();
        }
        return loaded.container();
    }

    private static void takenInItemIsOneThatTheOperationConsumes(Fact<StepKind.Body> fact, RouteStep step, Taken use) {
        if (!step.takesIn(use.item().id())) {
            fact.breaks(
                    "taken-in-item-is-one-that-the-operation-consumes",
                    "Operation " + step.operation() + " does not take in item "
                            + use.item().number() + ", nor is it an approved alternate",
                    "Take the right material, or release a route that allows this item",
                    about(use));
        }
    }

    private void lotIsOfTheItemTakenIn(Fact<?> fact, Taken use, long lot) {
        lots.itemOf(lot)
                .filter(item -> item != use.item().id())
                .ifPresent(item -> fact.breaks(
                        "lot-is-of-the-item-taken-in",
                        "Lot " + lots.number(lot) + " is not of item "
                                + use.item().number() + " that was taken in",
                        "Find out what it was: correct item or lot, or record the charge that was missed",
                        TraceRef.lot(lot)));
    }

    private static TraceRef[] about(Taken use) {
        return use.lot() == null ? new TraceRef[0] : new TraceRef[] {TraceRef.lot(use.lot())};
    }
}
