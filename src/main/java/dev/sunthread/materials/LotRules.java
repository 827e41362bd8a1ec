package dev.sunthread.materials;

import dev.sunthread.holds.Holds;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import org.springframework.stereotype.Component;

/** What must hold of a lot before it is loaded or used. */
@Component
public class LotRules {

    private final Lots lots;
    private final Holds holds;

    LotRules(Lots lots, Holds holds) {
        this.lots = lots;
        this.holds = holds;
    }

    /** The internal number of a lot that is being loaded or used, with what is wrong noted or refused. */
    public long taken(Fact<?> fact, String number) {
        long lot = lots.known(number);
        lotIsReceived(fact, number, lot);
        lotIsNotOnHold(fact, number, lot);
        return lot;
    }

    private void lotIsReceived(Fact<?> fact, String number, long lot) {
        if (!lots.received(lot)) {
            fact.breaks(
                    "lot-is-received",
                    "Lot " + number + " has no receipt",
                    "Record its receipt, or correct the lot number",
                    TraceRef.lot(lot));
        }
    }

    private void lotIsNotOnHold(Fact<?> fact, String number, long lot) {
        holds.on(TraceRef.lot(lot))
                .forEach(hold -> fact.breaks(
                        "lot-is-not-on-hold",
                        "Lot " + number + " is on hold: " + hold.reason(),
                        "Set it aside and ask quality",
                        TraceRef.lot(lot)));
    }
}
