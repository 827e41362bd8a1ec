package dev.sunthread.journal;

import dev.sunthread.inbox.KeptLine;
import dev.sunthread.journal.LineOutcome.FindingSeen;
import dev.sunthread.journal.LineOutcome.Outcome;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Acceptance;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Entries;
import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.EnvelopeHead;
import dev.sunthread.ledger.Manner;
import dev.sunthread.ledger.body.FieldProblem;
import dev.sunthread.ledger.body.Unreadable;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.springframework.stereotype.Component;

/** Takes one line within a transaction: accepts what it says, or keeps it in the inbox with the reason. */
@Component
class LineTaker {

    private static final int LONGEST_SHOWN = 1_000_000;

    private final Door door;
    private final Entries entries;
    private final Clock clock;

    LineTaker(Door door, Entries entries, Clock clock) {
        this.door = door;
        this.entries = entries;
        this.clock = clock;
    }

    /** Takes a line; empty if it says nothing to record, as the first and last line do. */
    Optional<LineOutcome> take(RawLine raw, Sender sender) {
        try {
            if (!(JournalLine.read(raw) instanceof JournalLine.Said said)) {
                return Optional.empty();
            }
            Acceptance accepted = door.acceptWithin(said.envelope(), Manner.TOLD);
            return Optional.of(outcome(raw, accepted));
        } catch (Unreadable e) {
            return Optional.of(keep(raw, sender, e.problems()));
        } catch (Refused e) {
            return Optional.of(keep(raw, sender, List.of(new FieldProblem("line", e.reason(), e.remedy()))));
        }
    }

    private static LineOutcome outcome(RawLine raw, Acceptance accepted) {
        Outcome outcome = !accepted.isNew()
                ? Outcome.KNOWN_BEFORE
                : accepted.findings().isEmpty() ? Outcome.ACCEPTED : Outcome.ACCEPTED_WITH_FINDING;
        List<FindingSeen> findings =
                accepted.findings().stream().map(FindingSeen::of).toList();
        return new LineOutcome(raw.number(), outcome, accepted.id(), findings, List.of());
    }

    private LineOutcome keep(RawLine raw, Sender sender, List<FieldProblem> problems) {
        // the same text is the same line, whichever file brings it again
        String id = "line-" + raw.sha256().substring(0, 40);
        if (entries.known(Set.of(id)).isEmpty()) {
            var head = new EnvelopeHead(id, "kept-line", 1, OffsetDateTime.now(clock), sender.actor(), "journal");
            door.accept(Envelope.of(head, kept(raw, sender, problems)), Manner.TOLD);
        }
        return new LineOutcome(raw.number(), Outcome.KEPT_IN_INBOX, id, List.of(), problems);
    }

    private static KeptLine kept(RawLine raw, Sender sender, List<FieldProblem> problems) {
        String text = raw.shown();
        String shown = text.length() <= LONGEST_SHOWN ? text : text.substring(0, wholeCharacters(text));
        return new KeptLine(
                sender.file(),
                raw.number(),
                (int) Math.min(raw.length(), Integer.MAX_VALUE),
                raw.sha256(),
                shown,
                problems.stream().limit(100).map(KeptLine.Problem::of).toList(),
                NamesRead.in(text));
    }

    private static int wholeCharacters(String text) {
        return Character.isHighSurrogate(text.charAt(LONGEST_SHOWN - 1)) ? LONGEST_SHOWN - 1 : LONGEST_SHOWN;
    }
}
