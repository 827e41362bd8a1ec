package dev.sunthread.materials;

import dev.sunthread.holds.Holds;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** Records that a lot was made here, as part of whatever happening brought it about. */
@Service
public class LotMaking {

    private final Lots lots;
    private final Holds holds;
    private final JdbcClient jdbc;

    LotMaking(Lots lots, Holds holds, JdbcClient jdbc) {
        this.lots = lots;
        this.holds = holds;
        this.jdbc = jdbc;
    }

    /** Records that a lot was made when the fact occurred, of nothing that is a lot, and gives its internal number. */
    public long made(Fact<?> fact, NewLot made) {
        return made(fact, made, List.of());
    }

    /** Records that a lot was made of parts of lots when the fact occurred, and gives its internal number. */
    public long made(Fact<?> fact, NewLot made, List<LotPart> parts) {
        long lot = lots.known(made.number());
        lotIsMadeOnce(fact, made, lot);
        if (parts.stream().anyMatch(part -> part.lot() == lot)) {
            lotIsNotMadeOfItself(fact, made.number(), lot);
        }
        insert(fact, lot, made);
        lots.originChanged(lot);
        for (int i = 0; i < parts.size(); i++) {
            insert(fact.entry(), lot, i + 1, parts.get(i));
        }
        parts.stream().map(LotPart::lot).distinct().forEach(part -> heldLotHoldsWhatIsMadeOfIt(fact, part, lot));
        return lot;
    }

    void heldLotHoldsWhatIsMadeOfIt(Fact<?> fact, long part, long made) {
        if (!holds.on(TraceRef.lot(part)).isEmpty()) {
            holds.place(
                    fact, TraceRef.lot(made), "It was made of lot " + lots.number(part) + " while that was on hold");
        }
    }

    private void insert(Fact<?> fact, long lot, NewLot made) {
        jdbc.sql("""
                        INSERT INTO materials.lot_making
                          (entry, lot, way, item, quantity, unit_of_measure, expires_at, station, made_at)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(fact.entry(), lot, made.way().name())
                .param(made.item())
                .param(made.quantity())
                .param(made.unitOfMeasure())
                .param(made.expiresAt())
                .param(made.station())
                .param(fact.occurredAt())
                .update();
    }

    private void insert(long entry, long lot, int ordinal, LotPart part) {
        jdbc.sql("""
                        INSERT INTO materials.lot_component
                          (entry, lot, ordinal, component, container, quantity, unit_of_measure)
                        VALUES (?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(entry, lot, ordinal, part.lot())
                .param(part.container())
                .param(part.quantity())
                .param(part.unitOfMeasure())
                .update();
    }

    /** What is taken out of units may be gathered in one lot, or go back into the one it came from. */
    private void lotIsMadeOnce(Fact<?> fact, NewLot made, long lot) {
        if (made.way() != NewLot.Way.RECOVERY && lots.hasOrigin(lot)) {
            fact.breaks(
                    "lot-is-made-once",
                    "Lot " + made.number() + " was received or made before",
                    "Give what was made a lot number of its own, or void the record that is wrong",
                    TraceRef.lot(lot));
        }
    }

    private static void lotIsNotMadeOfItself(Fact<?> fact, String number, long lot) {
        fact.breaks(
                "lot-is-not-made-of-itself",
                "Lot " + number + " is recorded as made of itself",
                "Give what was made a lot number of its own",
                TraceRef.lot(lot));
    }
}
