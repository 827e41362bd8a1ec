package dev.sunthread.materials;

import dev.sunthread.catalog.Item;
import dev.sunthread.catalog.Position;
import dev.sunthread.catalog.PositionItems;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** What must hold of material that is loaded, beside what must hold of every lot that is taken. */
@Component
class LoadRules {

    private final Lots lots;
    private final LotRules lotRules;
    private final ContainerRules containerRules;
    private final ContainerAges ages;
    private final PositionItems taken;

    LoadRules(Lots lots, LotRules lotRules, ContainerRules containerRules, ContainerAges ages, PositionItems taken) {
        this.lots = lots;
        this.lotRules = lotRules;
        this.containerRules = containerRules;
        this.ages = ages;
        this.taken = taken;
    }

    /** The station's revision in force states no items for the position, or the lot is of one of them. */
    void onlyWhatThePositionTakesIsLoaded(Fact<?> fact, Position position, String number, long lot) {
        List<Item> stated = taken.stated(position, fact.occurredAt());
        if (!stated.isEmpty()) {
            lots.itemOf(lot)
                    .filter(item -> !taken.areOrStandInFor(stated, item, fact.occurredAt()))
                    .ifPresent(item -> fact.breaks(
                            "only-what-the-position-takes-is-loaded",
                            "Lot " + number + " was loaded at position " + position.code() + " of "
                                    + position.stationCode() + ", which takes " + numbers(stated),
                            "Load a lot of an item that the position takes, or have a revision of the station released"
                                    + " that takes this one",
                            TraceRef.lot(lot)));
        }
    }

    private static String numbers(List<Item> items) {
        return items.stream().map(Item::number).collect(Collectors.joining(", "));
    }

    /** The lot is not expired, and the container that it comes in may be used; asked once the charge is in history. */
    void chargedMayBeUsed(Fact<?> fact, String number, long lot, @Nullable Long container) {
        lotRules.lotIsNotExpired(fact, number, lot, null);
        if (container != null) {
            ages.changed(container);
            containerRules.containerMayBeUsed(fact, container, lots.itemOf(lot).orElse(null), null);
        }
    }
}
