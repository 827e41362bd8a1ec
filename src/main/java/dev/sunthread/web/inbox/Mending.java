package dev.sunthread.web.inbox;

import dev.sunthread.access.Callers;
import dev.sunthread.inbox.Lines;
import dev.sunthread.journal.Imports;
import dev.sunthread.journal.LineOutcome;
import dev.sunthread.journal.Sender;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.EnvelopeReader;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.ledger.body.Unreadable;
import java.io.IOException;
import java.util.UUID;
import org.springframework.stereotype.Service;

/** Takes a mended line in and settles the kept one; a line that broke off between the two can be sent again. */
@Service
class Mending {

    private final Lines lines;
    private final Imports imports;
    private final Settlements settlements;
    private final Sealer sealer;
    private final Callers callers;

    Mending(Lines lines, Imports imports, Settlements settlements, Sealer sealer, Callers callers) {
        this.lines = lines;
        this.imports = imports;
        this.settlements = settlements;
        this.sealer = sealer;
        this.callers = callers;
    }

    /**
     * Records the mended line and gives the id it is recorded under.
     *
     * @throws Unreadable if it can't be accepted still; the kept line stays open
     * @throws Refused if the kept line is open no longer
     */
    String mend(MendForm form) throws IOException {
        long before = sealer.seal();
        String text = String.valueOf(form.text());
        boolean ownWords = !saysTheSamePerson(lines.open(form.line(), before).text(), text);
        LineOutcome outcome = imports.takeLine(
                        text, new Sender(callers.signedIn().mark(), "inbox", ownWords))
                .orElseThrow(
                        () -> Unreadable.at("line", "says nothing to record", "Give one envelope as a JSON object"));
        String id = String.valueOf(outcome.id());
        if (outcome.outcome() == LineOutcome.Outcome.KEPT_IN_INBOX) {
            forgetAttempt(id, form, before);
            throw new Unreadable(outcome.problems());
        }
        settlements.settleLine(form.line(), id, form.id(), form.why());
        return id;
    }

    /** Whoever mends a line can't put words into the mouth of somebody whom the kept line did not name. */
    private static boolean saysTheSamePerson(String kept, String mended) {
        String actor = actor(mended);
        return !actor.isEmpty() && actor.equals(actor(kept));
    }

    private static String actor(String line) {
        try {
            return EnvelopeReader.parse(line).path("actor").asString("");
        } catch (Unreadable e) {
            return "";
        }
    }

    /** An attempt that failed waits for nobody: the line it was to replace stays open. */
    private void forgetAttempt(String attempt, MendForm form, long before) {
        if (!isOpen(attempt, before) && isOpen(attempt, sealer.seal())) {
            String why = "An attempt to mend " + form.line() + ", which stays open";
            settlements.settleLine(attempt, null, "attempt-" + UUID.randomUUID(), why);
        }
    }

    private boolean isOpen(String line, long cutoff) {
        try {
            lines.open(line, cutoff);
            return true;
        } catch (Refused notOpen) {
            return false;
        }
    }
}
