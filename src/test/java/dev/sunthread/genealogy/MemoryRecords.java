package dev.sunthread.genealogy;

import dev.sunthread.genealogy.records.Records;
import java.util.List;

/** The records of things said, held in memory; most readings give everything there is, which a reading may. */
final class MemoryRecords {

    private MemoryRecords() {}

    static Records of(List<Said> said, Numbers numbers) {
        Remembered remembered = new Remembered(said, numbers);
        MemoryLots lots = new MemoryLots(remembered);
        MemoryLines lines = new MemoryLines(remembered);
        return new Records(
                new MemoryHappenings(remembered),
                new MemoryUses(remembered, new MemoryPositions(remembered, lots, lines.open())),
                new MemoryPlacements(remembered),
                lots,
                new MemoryDemands(remembered),
                new MemorySigns(remembered, lines.open()),
                lines);
    }
}
