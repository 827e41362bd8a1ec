package dev.sunthread.station;

import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.RaisedFinding;
import dev.sunthread.ledger.body.Unreadable;
import dev.sunthread.station.label.Command;
import dev.sunthread.station.label.Label;
import dev.sunthread.station.pass.PassableRefusal;
import dev.sunthread.station.work.Recording;
import dev.sunthread.station.work.Turn;
import dev.sunthread.station.work.Work;
import dev.sunthread.station.work.Works;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
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
    private final DoubleReads doubles;
    private final PassableTurns turns;
    private final ScanTimes times;
    private final Door door;
    private final TransactionTemplate transaction;

    Bench(
            TakenScans scans,
            Works works,
            Meanings meanings,
            DoubleReads doubles,
            PassableTurns turns,
            ScanTimes times,
            Door door,
            PlatformTransactionManager transactions) {
        this.scans = scans;
        this.works = works;
        this.meanings = meanings;
        this.doubles = doubles;
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
            return allowed(station, person, scan);
        } catch (Refused refused) {
            return once(station, person, scan, work -> refused(station, person, scan, refused, work));
        }
    }

    /** What begins is seen first whether it may be done, which is all taken back, and then taken in hand. */
    private Verdict allowed(String station, String person, Scan scan) {
        try {
            return once(
                    station,
                    person,
                    scan,
                    work -> take(recording(station, person, scan).trying(), scan, work));
        } catch (Tried tried) {
            return once(station, person, scan, work -> take(recording(station, person, scan), scan, work));
        }
    }

    private Recording recording(String station, String person, Scan scan) {
        return new Recording(door, station, person, scan);
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

    private Verdict take(Recording recording, Scan scan, Work work) {
        String station = recording.station();
        String person = recording.person();
        Optional<TakenScans.Last> last = scans.last(station, person);
        Meanings.Meant meant = meanings.of(last, station, scan, work);
        Optional<Verdict> again = doubles.of(last, scan, meant, work);
        if (again.isPresent()) {
            return word(station, person, scan, again.get());
        }
        Turn turn = turns.of(work, works.before(station, person), meant, recording);
        if (recording.isTried()) {
            throw new Tried();
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

        Tried() {
            super("tried", null, false, false);
        }
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
        Verdict said = declined(scan, why).with(why instanceof PassableRefusal passable ? passable.passing() : null);
        if (scan.kept()) {
            Recording recording = recording(station, person, scan);
            List<Label> read = meanings.of(scans.last(station, person), station, scan, work)
                    .labels();
            said = kept(recording, scan, work, read, why.reason(), why.remedy());
        }
        return word(station, person, scan, said);
    }

    /** What can't be read or identified is told by the names of fields, which say nothing at a station. */
    private static Verdict declined(Scan scan, Refused why) {
        return why instanceof Unreadable
                ? Verdict.refused(Say.of("cannot", scan.text()), Say.of("cannot.remedy"))
                : Verdict.refused(Say.why(why), Say.words(why.remedy()));
    }

    private Verdict word(String station, String person, Scan scan, Verdict said) {
        scans.keep(station, person, scan, said);
        return said;
    }
}
