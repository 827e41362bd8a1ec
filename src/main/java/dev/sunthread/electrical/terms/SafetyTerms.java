package dev.sunthread.electrical.terms;

import dev.sunthread.kernel.verdict.Criterion;
import dev.sunthread.kernel.verdict.Digit;
import dev.sunthread.kernel.verdict.Limits;
import dev.sunthread.kernel.verdict.Outcome;
import dev.sunthread.kernel.verdict.Phrase;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * What a test of insulation or of the path to ground must show.
 *
 * @param applied from what voltage, or current through the ground path, on it counts
 * @param seconds for how long that must have been held
 */
public record SafetyTerms(SafetyQuantity quantity, Limits limits, BigDecimal applied, BigDecimal seconds) {

    /**
     * The worst of the readings that were taken as demanded counts, and any that broke the limit although less was applied.
     */
    Criterion judge(List<SafetyReading> readings) {
        List<SafetyReading> taken = readings.stream().filter(quantity::isReadBy).toList();
        List<SafetyReading> telling =
                taken.stream().filter(reading -> !reading.showsNothing()).toList();
        return Stream.concat(
                        within(telling.stream().filter(this::isAsDemanded)),
                        within(telling.stream().filter(reading -> !isAsDemanded(reading)))
                                .filter(criterion -> criterion.outcome() == Outcome.FAILED))
                .max(Comparator.comparing(Criterion::outcome))
                .orElseGet(() -> quantity.missing(limits, lacking(taken, telling)));
    }

    private Stream<Criterion> within(Stream<SafetyReading> readings) {
        return readings.map(reading -> quantity.within(limits, List.of(reading)));
    }

    private boolean isAsDemanded(SafetyReading reading) {
        return quantity.applied(reading).compareTo(applied) >= 0
                && reading.seconds().compareTo(seconds) >= 0;
    }

    private Phrase lacking(List<SafetyReading> taken, List<SafetyReading> telling) {
        if (taken.isEmpty()) {
            return Phrase.of("judged.safety.not-measured");
        }
        return telling.isEmpty()
                ? Phrase.of("judged.safety.shows-nothing")
                : Phrase.of(
                        "judged.safety.weak",
                        Digit.plain(applied.doubleValue()),
                        quantity.appliedUnit(),
                        Digit.plain(seconds.doubleValue()));
    }

    /**
     * The insulation resistance demanded of an area: a fixed one for small areas, else one that shrinks with the area.
     *
     * @param area in m2
     * @param small up to what area the fixed one holds
     * @param fixed what is demanded of small areas, in Mohm
     * @param timesArea what resistance times area must reach, in Mohm m2
     */
    public static Limits insulation(BigDecimal area, BigDecimal small, Limits fixed, BigDecimal timesArea) {
        return area.compareTo(small) <= 0
                ? fixed
                : new Limits(timesArea.divide(area, MathContext.DECIMAL128).doubleValue(), fixed.most(), fixed.guard());
    }
}
