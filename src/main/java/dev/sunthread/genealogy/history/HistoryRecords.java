package dev.sunthread.genealogy.history;

import dev.sunthread.genealogy.records.LineRecords;
import dev.sunthread.genealogy.records.Records;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The records of history in the database, as known at a cut-off. */
public final class HistoryRecords {

    private HistoryRecords() {}

    /** The kept lines that are open. */
    public static LineRecords lines(JdbcClient jdbc, long cutoff, Clocks clocks) {
        return new LineHistory(jdbc, cutoff, clocks);
    }

    public static Records at(JdbcClient jdbc, long cutoff) {
        return at(jdbc, cutoff, new Clocks(jdbc, cutoff));
    }

    /** The same by clocks that are read already, as known at that cut-off. */
    public static Records at(JdbcClient jdbc, long cutoff, Clocks clocks) {
        LineRecords lines = lines(jdbc, cutoff, clocks);
        return new Records(
                new HappeningHistory(jdbc, cutoff, clocks),
                new UseHistory(jdbc, cutoff, clocks, lines),
                new PlacementHistory(jdbc, cutoff, clocks),
                new LotHistory(jdbc, cutoff, clocks, lines),
                new DemandHistory(jdbc, cutoff),
                new SignHistory(jdbc, cutoff, clocks, lines),
                lines);
    }
}
