package dev.sunthread.materials;

import dev.sunthread.holds.Holds;
import dev.sunthread.holds.Passes;
import dev.sunthread.holds.SoftRule;
import dev.sunthread.kernel.Measures;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Known;
import dev.sunthread.ledger.SoleWriter;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** What must hold of a lot before something is done with it. */
@Component
public class LotRules {

    private static final String ENDINGS = "endings";

    private final Lots lots;
    private final Holds holds;
    private final Expiry expiry;
    private final Passes passes;
    private final SoleWriter sole;
    private final JdbcClient jdbc;

    LotRules(Lots lots, Holds holds, Expiry expiry, Passes passes, SoleWriter sole, JdbcClient jdbc) {
        this.sole = sole;
        this.lots = lots;
        this.holds = holds;
        this.expiry = expiry;
        this.passes = passes;
        this.jdbc = jdbc;
    }

    /** The internal number of a lot that something is recorded of, with what is wrong noted or refused. */
    public long named(Fact<?> fact, String number) {
        long lot = lots.known(number);
        lotIsReceived(fact, number, lot);
        return lot;
    }

    /** The internal number of a lot that is being loaded or used, with what is wrong noted or refused. */
    public long taken(Fact<?> fact, String number) {
        long lot = named(fact, number);
        lotIsNotOnHold(fact, number, lot);
        lotIsNotEnded(fact, number, lot);
        return lot;
    }

    /** The internal number of a lot that another is made of, with what is wrong noted or refused. */
    public long madeInto(Fact<?> fact, String number) {
        long lot = taken(fact, number);
        lotIsNotExpired(fact, number, lot, null);
        return lot;
    }

    /** What is wrong with a lot that something is taken in of because it is recorded as loaded, noted or refused. */
    public void loadedLotMayBeUsed(Fact<?> fact, long lot, String operation) {
        String number = lots.number(lot);
        lotIsNotOnHold(fact, number, lot);
        lotIsNotEnded(fact, number, lot);
        lotIsNotExpired(fact, number, lot, operation);
    }

    /** Notes or refuses a quantity that can't be told in the unit that the lot's item has, if both are known. */
    public void quantityIsInTheLotsUnit(Fact<?> fact, String number, long lot, @Nullable String unitOfMeasure) {
        if (unitOfMeasure != null) {
            lots.unitOf(lot)
                    .filter(unit -> !Measures.areOfOneDimension(unit, unitOfMeasure))
                    .ifPresent(unit -> fact.breaks(
                            "quantity-is-in-the-unit-of-the-lot",
                            "A quantity of lot " + number + " is in " + unitOfMeasure + ", where its item has " + unit,
                            "Correct the quantity to the item's unit",
                            TraceRef.lot(lot)));
        }
    }

    private void lotIsReceived(Fact<?> fact, String number, long lot) {
        if (!lots.hasOrigin(lot)) {
            fact.breaks(
                    "lot-is-received",
                    "Lot " + number + " has no receipt",
                    "Record its receipt or how it was made, or correct the lot number",
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

    private void lotIsNotEnded(Fact<?> fact, String number, long lot) {
        if (firstEnding(lot).isBefore(fact.occurredAt())) {
            fact.breaks(
                    "lot-is-not-ended",
                    "Nothing of lot " + number + " was left any more, by its recorded ending",
                    "Find out which lot it was, or void the ending that is wrong",
                    TraceRef.lot(lot));
        }
    }

    /** When nothing of the lot was left by the first record that says so; the end of time if none does. */
    private OffsetDateTime firstEnding(long lot) {
        return sole.<Long, OffsetDateTime>known(ENDINGS)
                .computeIfAbsent(
                        lot,
                        asked -> jdbc.sql("""
                        SELECT n.ended_at FROM materials.lot_ending n
                        WHERE n.lot = ? AND n.container IS NULL AND %s ORDER BY n.ended_at LIMIT 1
                        """.formatted(Known.now("n.entry")))
                                .param(asked)
                                .query(OffsetDateTime.class)
                                .optional()
                                .orElse(OffsetDateTime.MAX));
    }

    /** Says that the ending of a lot is being recorded. */
    public void endingsChanged() {
        sole.known(ENDINGS).clear();
    }

    /**
     * Notes or refuses a lot that had expired.
     *
     * @param operation the operation that takes it in; absent if it is none
     */
    public void lotIsNotExpired(Fact<?> fact, String number, long lot, @Nullable String operation) {
        OffsetDateTime expiresAt = expiry.now(lot).orElse(OffsetDateTime.MAX);
        if (!fact.occurredAt().isBefore(expiresAt)) {
            passes.breaks(
                    fact,
                    SoftRule.LOT_IS_NOT_EXPIRED,
                    operation,
                    new Passes.Words("Lot " + number + " had expired", "Set it aside and ask quality"),
                    List.of(TraceRef.lot(lot)));
        }
    }
}
