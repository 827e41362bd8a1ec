package dev.sunthread.station;

import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.RaisedFinding;
import dev.sunthread.station.label.Command;
import dev.sunthread.station.label.Label;
import dev.sunthread.station.pass.PassableRefusal;
import dev.sunthread.station.work.Recording;
import dev.sunthread.station.work.Turn;
import dev.sunthread.station.work.Work;
import dev.sunthread.station.work.Works;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** Takes scans at stations, one transaction each, and says of each what came of it. */
@Service
public class Bench {

    private final TakenScans scans;
    private final Works works;
    private final Meanings meanings;
    private final PassableTurns turns;
    private final ScanTimes times;
    private final Door door;
    private final TransactionTemplate transaction;

    Bench(
            TakenScans scans,
            Works works,
            Meanings meanings,
            PassableTurns turns,
            ScanTimes times,
            Door door,
            PlatformTransactionManager transactions) {
        this.scans = scans;
        this.works = works;
        this.meanings = meanings;
        this.turns = turns;
        this.times = times;
        this.door = door;
        this.transaction = new TransactionTemplate(transactions);
    }

    /**
     * Takes one scan of a person at a station. The same id again does nothing and gets the same word.
     */
    public Verdict scan(String station, String person, Scan scan) {
        try {
            return once(station, person, scan, work -> take(station, person, scan, work));
        } catch (Tried tried) {
            return once(station, person, scan, work -> begun(station, person, scan, tried.turn, work));
        } catch (Refused refused) {
            return once(station, person, scan, work -> refused(station, person, scan, refused, work));
        }
    }

    /** In one transaction, while nobody else takes a scan of this person here; of a scan that was taken the same word. */
    private Verdict once(String station, String person, Scan scan, Function<Work, Verdict> taken) {
        return Objects.requireNonNull(transaction.execute(status -> {
            Work work = works.locked(station, person);
            return scans.verdict(scan.id()).orElseGet(() -> {
                times.tell(station, scan);
                return taken.apply(work);
            });
        }));
    }

    private Verdict take(String station, String person, Scan scan, Work work) {
        Meanings.Meant meant = meanings.of(station, person, scan, work);
        Recording recording = new Recording(door, station, person, scan);
        Turn turn = turns.of(work, works.before(station, person), meant, recording);
        if (recording.isTried()) {
            throw new Tried(turn);
        }
        Verdict said = turn.verdict();
        if (scan.kept() && !said.isDone()) {
            said = kept(
                    recording,
                    scan,
                    work,
                    meant.labels(),
                    "A scan that was kept while the server was away could not be understood in its place ("
                            + said.said().key() + ")",
                    "Find out what was done and record it, then settle this line");
        } else if (meant.isTold(Command.UNDO)) {
            // only the last scan can be taken back, and not the taking back
            works.keep(station, person, turn.work(), turn.work());
        } else if (said.isDone()
                || said.outcome() == Verdict.Outcome.ASKED && !turn.work().equals(work)) {
            works.keep(station, person, turn.work().recorded(recording.entries()), work);
        }
        return word(station, person, scan, withFindings(said, recording.findings()));
    }

    /** Takes everything back that was recorded to see whether it may be done. */
    private static final class Tried extends RuntimeException {

        private final transient Turn turn;

        Tried(Turn turn) {
            super("tried", null, false, false);
            this.turn = turn;
        }
    }

    /** Nothing forbids what begins now; it is recorded once it is over. */
    private Verdict begun(String station, String person, Scan scan, Turn turn, Work work) {
        works.keep(station, person, turn.work().recorded(List.of()), work);
        return word(station, person, scan, turn.verdict());
    }

    private static Verdict kept(
            Recording recording, Scan scan, Work work, List<Label> read, String reason, String remedy) {
        KeptScan.record(recording, scan, work, read, reason, remedy);
        return Verdict.noted(Say.of("kept.in-inbox", scan.text()), Say.of("kept.in-inbox.remedy"));
    }

    private static Verdict withFindings(Verdict said, List<RaisedFinding> findings) {
        return findings.isEmpty() || said.outcome() != Verdict.Outcome.ACCEPTED
                ? said
                : Verdict.noted(said.said(), Say.noted(findings.get(0)));
    }

    /** Nothing is recorded of what a rule forbids; of a kept scan all that is known goes to the inbox. */
    private Verdict refused(String station, String person, Scan scan, Refused why, Work work) {
        Verdict said = Verdict.refused(Say.why(why), Say.words(why.remedy()))
                .with(why instanceof PassableRefusal passable ? passable.passing() : null);
        if (scan.kept()) {
            Recording recording = new Recording(door, station, person, scan);
            List<Label> read = meanings.of(station, person, scan, work).labels();
            said = kept(recording, scan, work, read, why.reason(), why.remedy());
        }
        return word(station, person, scan, said);
    }

    private Verdict word(String station, String person, Scan scan, Verdict said) {
        scans.keep(station, person, scan, said);
        return said;
    }
}
