package dev.sunthread.electrical.terms;

import dev.sunthread.kernel.verdict.Criterion;
import dev.sunthread.kernel.verdict.Digit;
import dev.sunthread.kernel.verdict.Limits;
import dev.sunthread.kernel.verdict.Phrase;
import java.util.List;

/**
 * What a test of insulation or of the path to ground must show.
 *
 * @param applied from what voltage, or current through the ground path, on it counts
 * @param seconds for how long that must have been held
 */
public record SafetyTerms(SafetyQuantity quantity, Limits limits, double applied, double seconds) {

    /** The worst of the readings that were taken as demanded counts. */
    Criterion judge(List<SafetyReading> readings) {
        List<SafetyReading> taken = readings.stream().filter(quantity::isReadBy).toList();
        if (taken.isEmpty()) {
            return quantity.missing(limits, Phrase.of("judged.safety.not-measured"));
        }
        return taken.stream()
                .filter(reading -> quantity.applied(reading) >= applied && reading.seconds() >= seconds)
                .map(reading -> quantity.within(limits, List.of(reading)))
                .max((one, other) -> one.outcome().compareTo(other.outcome()))
                .orElseGet(() -> quantity.missing(limits, weak()));
    }

    private Phrase weak() {
        return Phrase.of("judged.safety.weak", Digit.plain(applied), quantity.appliedUnit(), Digit.plain(seconds));
    }

    /**
     * The insulation resistance demanded of an area: a fixed one for small areas, else one that shrinks with the area.
     *
     * @param area in m2
     * @param small up to what area the fixed one holds
     * @param least the fixed one in Mohm
     * @param timesArea what resistance times area must reach, in Mohm m2
     */
    public static Limits insulation(double area, double small, double least, double timesArea) {
        return Limits.atLeast(area <= small ? least : timesArea / area);
    }
}
