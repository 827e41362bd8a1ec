package dev.sunthread.materials;

import dev.sunthread.ledger.Fact;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** What must hold of material that is loaded, beside what must hold of every lot that is taken. */
@Component
class LoadRules {

    private final Lots lots;
    private final LotRules lotRules;
    private final ContainerRules containerRules;
    private final ContainerAges ages;

    LoadRules(Lots lots, LotRules lotRules, ContainerRules containerRules, ContainerAges ages) {
        this.lots = lots;
        this.lotRules = lotRules;
        this.containerRules = containerRules;
        this.ages = ages;
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
