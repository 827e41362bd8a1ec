package dev.sunthread.production;

import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.materials.Charges;
import dev.sunthread.materials.Containers;
import dev.sunthread.materials.Loaded;
import dev.sunthread.materials.LotRules;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** What must hold of the material that a step takes in. */
@Component
class UseRules {

    private final LotRules lotRules;
    private final Charges charges;
    private final Containers containers;

    UseRules(LotRules lotRules, Charges charges, Containers containers) {
        this.lotRules = lotRules;
        this.charges = charges;
        this.containers = containers;
    }

    /** The internal number of the lot that was scanned as used, at a position if one is known. */
    long scanned(Fact<?> fact, String number, @Nullable Long position) {
        long lot = lotRules.taken(fact, number);
        if (position != null) {
            scannedLotIsTheOneLoaded(fact, number, lot, position);
        }
        return lot;
    }

    /** The internal number of the container that was scanned as used. */
    @Nullable
    Long container(@Nullable String label) {
        return label == null ? null : containers.known(label);
    }

    private void scannedLotIsTheOneLoaded(Fact<?> fact, String number, long lot, long position) {
        charges.at(position, fact.occurredAt())
                .map(Loaded::lot)
                .filter(loaded -> loaded != lot)
                .ifPresent(loaded -> fact.breaks(
                        "scanned-lot-is-the-one-loaded",
                        "Lot " + number + " was scanned as used where another lot is recorded as loaded",
                        "Find out which lot it was: correct the step, or record the charge that was missed",
                        TraceRef.lot(lot),
                        TraceRef.lot(loaded)));
    }
}
