package dev.sunthread.station;

import dev.sunthread.kernel.RuleBroken;
import dev.sunthread.station.label.Command;
import dev.sunthread.station.pass.PassableRules;
import dev.sunthread.station.pass.Passing;
import dev.sunthread.station.work.Recording;
import dev.sunthread.station.work.Turn;
import dev.sunthread.station.work.Turns;
import dev.sunthread.station.work.Undoing;
import dev.sunthread.station.work.Work;
import java.util.List;
import org.springframework.stereotype.Component;

/** What a scan comes to, with what can be signed where a rule refuses it that a person may pass. */
@Component
class PassableTurns {

    private final Turns turns;
    private final PassableRules rules;
    private final TakenScans scans;

    PassableTurns(Turns turns, PassableRules rules, TakenScans scans) {
        this.turns = turns;
        this.rules = rules;
        this.scans = scans;
    }

    /** @throws dev.sunthread.kernel.Refused if a rule forbids what the scan asks for */
    Turn of(Work work, Work before, Meanings.Meant meant, Recording recording) {
        if (meant.question() != null) {
            return new Turn(work, meant.question());
        }
        if (meant.isTold(Command.PASS)) {
            return pass(work, recording);
        }
        try {
            Turn turn = meant.isTold(Command.UNDO)
                    ? Undoing.of(work, before, recording)
                    : turns.of(work, meant.label(), recording);
            if (meant.chosen() != null && turn.verdict().isDone()) {
                recording.chosen(meant.chosen());
            }
            return turn;
        } catch (RuleBroken broken) {
            throw rules.of(broken, meant.text(), recording);
        }
    }

    /** Asks who signs that the rule is passed which refused the last scan. */
    private Turn pass(Work work, Recording recording) {
        return scans.last(recording.station(), recording.person())
                .map(last -> last.verdict().passing())
                .map(Passing::asked)
                .map(passing -> new Turn(work, asked(passing)))
                .orElseGet(
                        () -> new Turn(work, Verdict.refused(Say.of("pass.nothing"), Say.of("pass.nothing.remedy"))));
    }

    private static Verdict asked(Passing passing) {
        return new Verdict(
                Verdict.Outcome.ASKED,
                Say.of("pass.who", passing.rule()),
                Say.of("pass.who.remedy"),
                List.of(),
                passing);
    }
}
