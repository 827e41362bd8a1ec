package dev.sunthread.journal;

import dev.sunthread.ledger.RaisedFinding;
import dev.sunthread.ledger.body.FieldProblem;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What became of one line of an import.
 *
 * @param line its number, from 1
 * @param outcome what became of it
 * @param id the id it is recorded under: its own, or that of the envelope that keeps it in the inbox
 * @param findings the findings it raised
 * @param problems why it was kept in the inbox
 */
public record LineOutcome(
        int line, Outcome outcome, @Nullable String id, List<FindingSeen> findings, List<FieldProblem> problems) {

    /** What can become of a line. */
    public enum Outcome {
        ACCEPTED,
        ACCEPTED_WITH_FINDING,
        KNOWN_BEFORE,
        KEPT_IN_INBOX
    }

    /** A finding as a report tells it. */
    public record FindingSeen(String rule, String sentence, String remedy) {

        static FindingSeen of(RaisedFinding finding) {
            return new FindingSeen(finding.rule(), finding.sentence(), finding.remedy());
        }
    }
}
