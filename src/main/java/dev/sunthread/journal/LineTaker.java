package dev.sunthread.journal;

import dev.sunthread.journal.LineOutcome.FindingSeen;
import dev.sunthread.journal.LineOutcome.Outcome;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Acceptance;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Entries;
import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.Manner;
import dev.sunthread.ledger.body.FieldProblem;
import dev.sunthread.ledger.body.Unreadable;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.springframework.dao.NonTransientDataAccessException;
import org.springframework.stereotype.Component;

/** Takes lines within a transaction: accepts what each says, or keeps it in the inbox with the reason. */
@Component
class LineTaker {

    private final Door door;
    private final Entries entries;
    private final LineKeeper keeper;

    LineTaker(Door door, Entries entries, LineKeeper keeper) {
        this.door = door;
        this.entries = entries;
        this.keeper = keeper;
    }

    /** Takes lines in their order; a line that says nothing to record, as the first and last do, has no outcome. */
    List<LineOutcome> take(List<ReadLine> lines, Sender sender) {
        Map<String, byte[]> recorded = recorded(lines);
        return lines.stream()
                .map(line -> take(line, recorded, sender))
                .flatMap(Optional::stream)
                .toList();
    }

    /** What is recorded before under any of the lines' ids; asked at once, because most of a journal sent again is. */
    private Map<String, byte[]> recorded(List<ReadLine> lines) {
        return entries.hashes(lines.stream()
                .map(ReadLine::envelope)
                .filter(Objects::nonNull)
                .map(Envelope::id)
                .toList());
    }

    private Optional<LineOutcome> take(ReadLine line, Map<String, byte[]> recorded, Sender sender) {
        Envelope envelope = line.envelope();
        if (!line.problems().isEmpty()) {
            return Optional.of(keeper.keep(line.raw(), sender, line.problems()));
        }
        if (envelope == null) {
            return Optional.empty();
        }
        if (Arrays.equals(envelope.hash(), recorded.get(envelope.id()))) {
            return Optional.of(outcome(line.raw(), new Acceptance(envelope.id(), false, List.of())));
        }
        return Optional.of(accept(line.raw(), envelope, sender));
    }

    private LineOutcome accept(RawLine raw, Envelope envelope, Sender sender) {
        try {
            return outcome(raw, door.acceptWithin(envelope, Manner.TOLD));
        } catch (Unreadable e) {
            return keeper.keep(raw, sender, e.problems());
        } catch (Refused e) {
            return keeper.keep(raw, sender, List.of(new FieldProblem("line", e.reason(), e.remedy())));
        } catch (NonTransientDataAccessException e) {
            if (StoreFault.isNoRoom(e)) {
                // the line is as good as any: it is not kept as bad because the database has no room for it
                throw e;
            }
            return keeper.keep(raw, sender, List.of(notStored(e)));
        }
    }

    private static FieldProblem notStored(NonTransientDataAccessException e) {
        return new FieldProblem(
                "line",
                "can be read but is not stored: " + StoreFault.words(e),
                "Show it to whoever looks after Sunthread");
    }

    private static LineOutcome outcome(RawLine raw, Acceptance accepted) {
        Outcome outcome = !accepted.isNew()
                ? Outcome.KNOWN_BEFORE
                : accepted.findings().isEmpty() ? Outcome.ACCEPTED : Outcome.ACCEPTED_WITH_FINDING;
        List<FindingSeen> findings =
                accepted.findings().stream().map(FindingSeen::of).toList();
        return new LineOutcome(raw.number(), outcome, accepted.id(), findings, List.of());
    }
}
