package dev.sunthread.ledger;

import java.util.ArrayList;
import java.util.List;

/**
 * Records the envelopes of another database's export in the order of their positions, from the first on, keeping when
 * and by whom each was recorded. It is part of one transaction, which records alone until its end.
 */
public final class Restoration {

    private static final int PLACED_AT_ONCE = 500;
    private static final int COUNTED_AT_TIMES = 4;

    /** Records one envelope and gives the number of its entry. */
    interface Recorder {
        long record(Envelope envelope, Recorded recorded);
    }

    private final Recorder recorder;
    private final Entries entries;
    private final List<Long> unplaced = new ArrayList<>(PLACED_AT_ONCE);
    private long placed;
    private long nextCount;

    Restoration(Recorder recorder, Entries entries) {
        this.recorder = recorder;
        this.entries = entries;
    }

    /** Records the envelope of the next position. @throws Refused if it can't be read or recorded */
    public void record(Envelope envelope, Recorded recorded) {
        unplaced.add(recorder.record(envelope, recorded));
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
