package dev.sunthread.station;

import dev.sunthread.station.contact.ScanOrder;
import dev.sunthread.station.label.Label;
import dev.sunthread.station.work.Work;
import java.time.Duration;
import java.util.Optional;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Component;

/** Knows a label that was read twice: the second reading changes nothing and gets the word of the first. */
@Component
class DoubleReads {

    private final Duration window;

    DoubleReads(@Value("${sunthread.station.double-read:2s}") Duration window) {
        this.window = window;
    }

    /** What is said of a scan that only reads again what was read just before; empty if it is none. */
    Optional<Verdict> of(Optional<TakenScans.Last> last, Scan scan, Meanings.Meant meant, Work work) {
        if (meant.labels().stream().allMatch(DoubleReads::isTold)) {
            return Optional.empty();
        }
        return last.filter(before -> isReadAgain(before, scan))
                .or(() -> last.filter(before -> isAskedAbout(meant, work)))
                .map(TakenScans.Last::verdict)
                .map(DoubleReads::again);
    }

    // a word is said by a person, and a choice is made by one
    private static boolean isTold(Label label) {
        return label instanceof Label.OfCommand
                || label instanceof Label.OfOperation
                || label instanceof Label.Unknown unknown && unknown.text().startsWith(".");
    }

    private boolean isReadAgain(TakenScans.Last last, Scan scan) {
        Duration since = Duration.between(last.at(), scan.at());
        return last.text().strip().equals(scan.text().strip())
                && !since.isNegative()
                && since.compareTo(window) < 0
                && !(scan.kept() && since.compareTo(ScanOrder.STEP) <= 0);
    }

    /** Whether it names the material in hand, whose position is asked for. */
    private static boolean isAskedAbout(Meanings.Meant meant, Work work) {
        return meant.label() instanceof Label.OfMaterial material && work.isAbout(material.lot(), material.container());
    }

    private static Verdict again(Verdict first) {
        return first.isDone() ? first.noting(Say.of("read-twice")) : first;
    }
}
