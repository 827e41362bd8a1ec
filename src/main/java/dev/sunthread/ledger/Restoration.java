package dev.sunthread.ledger;

import dev.sunthread.kernel.Refused;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Records the envelopes of another database's export in the order of their positions, from the first on, keeping when
 * and by whom each was recorded. It is part of one transaction, which records alone until its end.
 */
public final class Restoration {

    private static final int PLACED_AT_ONCE = 500;
    private static final int COUNTED_AT_TIMES = 2;

    /** An envelope as it once came into a ledger. */
    public record Entered(Envelope envelope, Recorded recorded) {}

    /** Records one envelope as an entry that is there. */
    interface Recorder {
        void record(Envelope envelope, long entry, OffsetDateTime recordedAt);
    }

    private final Recorder recorder;
    private final RestoredEntries entries;
    private final Map<String, Long> opened = new HashMap<>();
    private final Map<String, OffsetDateTime> recordedAt = new HashMap<>();
    private final List<Long> unplaced = new ArrayList<>(PLACED_AT_ONCE);
    private long placed;
    private long nextCount;

    Restoration(Recorder recorder, RestoredEntries entries) {
        this.recorder = recorder;
        this.entries = entries;
    }

    /** Makes entries of the envelopes that are recorded next, which is quicker for many at once. */
    public void open(List<Entered> next) {
        opened.putAll(entries.openAll(next));
        next.forEach(one -> recordedAt.put(one.envelope().id(), one.recorded().at()));
    }

    /**
     * Records the envelope of the next position.
     *
     * @throws Refused if it can't be read or recorded, or another one of its id was
     */
    public void record(Envelope envelope) {
        Long entry = opened.remove(envelope.id());
        OffsetDateTime at = recordedAt.remove(envelope.id());
        if (entry == null || at == null) {
            throw new Refused("was recorded before", "Take a whole, unchanged export");
        }
        recorder.record(envelope, entry, at);
        unplaced.add(entry);
        if (unplaced.size() == PLACED_AT_ONCE) {
            place();
            countNowAndThen();
        }
    }

    /** Ends it; the transaction must not be committed before. */
    public void end() {
        place();
    }

    /** What is planned on few rows is not good for long. */
    private void countNowAndThen() {
        if (placed >= nextCount) {
            entries.countAnew();
            nextCount = placed * COUNTED_AT_TIMES;
        }
    }

    private void place() {
        entries.closeAt(unplaced, placed + 1);
        placed += unplaced.size();
        unplaced.clear();
    }
}
