package dev.sunthread.web.lot;

import dev.sunthread.holds.Holds;
import dev.sunthread.inbox.Findings;
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

    LotPage read(long lot, String number, long cutoff) {
        TraceRef ref = TraceRef.lot(lot);
        return new LotPage(
                number,
                stocks.read(lot, cutoff),
                made.from(lot, cutoff),
                made.into(lot, cutoff),
                reading.receipts(lot, cutoff),
                holds.on(ref),
                findings.touching(List.of(ref), cutoff),
                reading.charges(lot, cutoff),
                reading.countUses(lot, cutoff),
                reading.latestUses(lot, cutoff),
                reading.countParts(lot, cutoff),
                reading.latestParts(lot, cutoff));
    }
}
