package dev.sunthread.web.lot;

import dev.sunthread.holds.Holds;
import dev.sunthread.inbox.Findings;
import dev.sunthread.kernel.Table;
import dev.sunthread.kernel.TraceRef;
import java.util.List;
import org.springframework.stereotype.Service;

/** Gathers what several modules know of one lot at a cut-off. */
@Service
class LotPages {

    private final Holds holds;
    private final Findings findings;
    private final LotReading reading;
    private final LotStocks stocks;
    private final MadeReading made;

    LotPages(Holds holds, Findings findings, LotReading reading, LotStocks stocks, MadeReading made) {
        this.holds = holds;
        this.findings = findings;
        this.reading = reading;
        this.stocks = stocks;
        this.made = made;
    }

    LotPage read(long lot, String number, LotView view, long cutoff) {
        TraceRef ref = TraceRef.lot(lot);
        LotStock stock = stocks.read(lot, view.containers(), cutoff);
        return new LotPage(
                number,
                stock,
                made.from(lot, cutoff),
                made.into(lot, cutoff),
                reading.receipts(lot, cutoff),
                holds.on(ref),
                findings.touching(List.of(ref), cutoff),
                reading.charges(lot, cutoff),
                BalancePicture.of(stock.balance()),
                reading.uses(lot, view.uses(), cutoff),
                reading.parts(lot, view.parts(), cutoff));
    }

    List<Table<?>> tables(long lot, long cutoff) {
        return List.of(
                LotTables.usedIn("uses", "column.operation", () -> reading.allUses(lot, cutoff)),
                LotTables.usedIn("parts", "column.into", () -> reading.allParts(lot, cutoff)),
                LotTables.containers(() -> stocks.containers(lot, cutoff)),
                LotTables.charges(() -> reading.charges(lot, cutoff)));
    }
}
