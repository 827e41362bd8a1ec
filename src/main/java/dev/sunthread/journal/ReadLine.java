package dev.sunthread.journal;

import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.body.FieldProblem;
import dev.sunthread.ledger.body.Unreadable;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A line and the envelope read from it, or what is wrong with it; neither if it says nothing to record. */
record ReadLine(RawLine raw, @Nullable Envelope envelope, List<FieldProblem> problems) {

    /** Reads a line; what its sender says is said by the sender, whoever the line names. */
    static ReadLine of(RawLine raw, Sender sender) {
        ReadLine line = of(raw);
        return line.envelope == null || !sender.isActor()
                ? line
                : new ReadLine(raw, line.envelope.saidBy(sender.actor()), line.problems);
    }

    private static ReadLine of(RawLine raw) {
        try {
            JournalLine line = JournalLine.read(raw);
            return new ReadLine(raw, line instanceof JournalLine.Said said ? said.envelope() : null, List.of());
        } catch (Unreadable e) {
            return new ReadLine(raw, null, e.problems());
        }
    }
}
