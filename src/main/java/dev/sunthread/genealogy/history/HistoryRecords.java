package dev.sunthread.genealogy.history;

import dev.sunthread.genealogy.records.Records;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The records of history in the database, as known at a cut-off. */
public final class HistoryRecords {

    private HistoryRecords() {}

    public static Records at(JdbcClient jdbc, long cutoff) {
        Clocks clocks = new Clocks(jdbc, cutoff);
        return new Records(
                new HappeningHistory(jdbc, cutoff, clocks),
                new UseHistory(jdbc, cutoff, clocks),
                new PlacementHistory(jdbc, cutoff, clocks),
                new LotHistory(jdbc, cutoff, clocks),
                new DemandHistory(jdbc, cutoff),
                new SignHistory(jdbc, cutoff, clocks),
                new LineHistory(jdbc, cutoff, clocks));
    }
}
