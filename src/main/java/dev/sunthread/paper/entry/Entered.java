package dev.sunthread.paper.entry;

import dev.sunthread.journal.LineOutcome;
import dev.sunthread.ledger.RaisedFinding;
import java.util.List;

/**
 * What came of entering a record.
 *
 * @param isNew whether it was not entered before
 * @param outcomes what became of each happening that it tells
 * @param findings what a person has to settle about the record itself
 */
public record Entered(boolean isNew, List<LineOutcome> outcomes, List<RaisedFinding> findings) {

    /** Whether all that it tells was recorded before, just so. */
    public boolean changedNothing() {
        return !isNew && outcomes.stream().allMatch(outcome -> outcome.outcome() == LineOutcome.Outcome.KNOWN_BEFORE);
    }
}
