package dev.sunthread.journal;

import dev.sunthread.inbox.KeptLine;
import dev.sunthread.journal.LineOutcome.Outcome;
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
import java.util.Set;
import org.springframework.stereotype.Component;

/** Keeps a line in the inbox with what is wrong with it. */
@Component
class LineKeeper {

    private static final int LONGEST_SHOWN = 1_000_000;
    private static final int MOST_PROBLEMS = 100;

    private final Door door;
    private final Entries entries;
    private final Clock clock;

    LineKeeper(Door door, Entries entries, Clock clock) {
        this.door = door;
        this.entries = entries;
        this.clock = clock;
    }

    /** Keeps the line once: the same text is the same line, whichever file brings it again. */
    LineOutcome keep(RawLine raw, Sender sender, List<FieldProblem> problems) {
        String id = "line-" + raw.sha256().substring(0, 40);
        if (!isKept(id)) {
            var head = new EnvelopeHead(id, "kept-line", 1, OffsetDateTime.now(clock), sender.actor(), "journal");
            accept(Envelope.of(head, kept(raw, sender, problems)));
        }
        return new LineOutcome(raw.number(), Outcome.KEPT_IN_INBOX, id, List.of(), problems);
    }

    private Acceptance accept(Envelope line) {
        try {
            return door.acceptWithin(line, Manner.TOLD);
        } catch (Unreadable e) {
            // another import may have kept the same line at this moment, with another time and file
            if (isKept(line.id())) {
                return new Acceptance(line.id(), false, List.of());
            }
            throw e;
        }
    }

    private boolean isKept(String id) {
        return !entries.known(Set.of(id)).isEmpty();
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
                problems.stream().limit(MOST_PROBLEMS).map(KeptLine.Problem::of).toList(),
                NamesRead.in(text));
    }

    private static int wholeCharacters(String text) {
        return Character.isHighSurrogate(text.charAt(LONGEST_SHOWN - 1)) ? LONGEST_SHOWN - 1 : LONGEST_SHOWN;
    }
}
