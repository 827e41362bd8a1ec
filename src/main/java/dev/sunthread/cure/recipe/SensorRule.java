package dev.sunthread.cure.recipe;

import dev.sunthread.cure.profile.RecordingRule;
import dev.sunthread.kernel.verdict.Criterion;
import dev.sunthread.kernel.verdict.Limits;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Span;
import java.util.List;
import java.util.function.BinaryOperator;
import java.util.stream.Stream;

/** Which of several sensors of a load counts. */
public enum SensorRule {
    /** What must at least be reached is judged by the lowest value of any sensor, what must not be exceeded by the highest. */
    COLDEST_AND_HOTTEST,
    /** The lowest value of any sensor counts for every limit. */
    COLDEST,
    /** The highest value of any sensor counts for every limit. */
    HOTTEST,
    /** The mean of all sensors counts. */
    MEAN,
    /** For a bond the sensor nearest to its position counts, for a whole load the coldest and the hottest. */
    NEAREST;

    private record Read(String sensor, Span value) {

        Read colder(Read other) {
            return new Read(value.low() <= other.value.low() ? sensor : other.sensor, value.lowest(other.value));
        }

        Read hotter(Read other) {
            return new Read(value.high() >= other.value.high() ? sensor : other.sensor, value.highest(other.value));
        }
    }

    /** One criterion for each side of the limits, over all the cures. */
    List<Criterion> judge(ThermalValue wanted, List<Measured> cures, RecordingRule recording) {
        Limits limits = wanted.limits();
        try {
            Read low = read(wanted, cures, recording.longestGap(), Read::colder);
            Read high = read(wanted, cures, recording.longestGap(), Read::hotter);
            return Stream.of(
                            limits.least() == null
                                    ? null
                                    : criterion(wanted, cures, this == HOTTEST ? high : low, limits.lower()),
                            limits.most() == null
                                    ? null
                                    : criterion(wanted, cures, this == COLDEST ? low : high, limits.upper()))
                    .flatMap(Stream::ofNullable)
                    .toList();
        } catch (IllegalArgumentException | IllegalStateException | ArithmeticException beyondNumbers) {
            return List.of(
                    Criterion.missing(wanted.named(), wanted.unit(), limits, Phrase.of("judged.beyond-numbers")));
        }
    }

    /** What was reached after all the cures, each by the sensor that comes first. */
    private Read read(ThermalValue wanted, List<Measured> cures, double longestGap, BinaryOperator<Read> first) {
        Read reached = new Read("", wanted.nothing());
        for (Measured cure : cures) {
            Span before = reached.value();
            reached = counted(cure, longestGap)
                    .map(sensor -> new Read(sensor.sensor(), wanted.after(before, sensor)))
                    .reduce(first)
                    .orElseGet(() -> new Read("", wanted.unknown(before)));
        }
        return reached;
    }

    private Stream<TemperatureOfRun> counted(Measured cure, double longestGap) {
        return this == MEAN && !cure.temperatures().isEmpty()
                ? Stream.of(TemperatureOfRun.mean(cure.temperatures(), cure.seconds(), longestGap))
                : cure.temperatures().stream().map(sensor -> TemperatureOfRun.of(sensor, cure.seconds(), longestGap));
    }

    private static Criterion criterion(ThermalValue wanted, List<Measured> cures, Read read, Limits limits) {
        Phrase name = cures.size() == 1
                ? Phrase.of("judged.of-sensor", wanted.named(), read.sensor())
                : Phrase.of("judged.of-cures", wanted.named(), String.valueOf(cures.size()));
        return Criterion.of(name, read.value(), wanted.unit(), limits);
    }
}
