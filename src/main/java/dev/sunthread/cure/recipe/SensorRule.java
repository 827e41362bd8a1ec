package dev.sunthread.cure.recipe;

import dev.sunthread.cure.profile.Means;
import dev.sunthread.cure.profile.RecordingRule;
import dev.sunthread.kernel.verdict.Criterion;
import dev.sunthread.kernel.verdict.Limits;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Span;
import java.util.Comparator;
import java.util.List;
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
    MEAN;

    private record Read(String sensor, Span value) {}

    /** One criterion for each side of the limits. */
    List<Criterion> judge(ThermalValue wanted, Measured run, RecordingRule recording) {
        List<Read> read = (this == MEAN ? Stream.of(Means.of(run.temperatures())) : run.temperatures().stream())
                .map(sensor -> new Read(
                        sensor.sensor(),
                        wanted.of(new TemperatureOfRun(sensor, run.seconds(), recording.longestGap()))))
                .toList();
        Read low = read.stream()
                .min(Comparator.comparingDouble(one -> one.value().low()))
                .orElseThrow();
        Read high = read.stream()
                .max(Comparator.comparingDouble(one -> one.value().high()))
                .orElseThrow();
        Limits limits = wanted.limits();
        return Stream.of(
                        limits.least() == null ? null : criterion(wanted, this == HOTTEST ? high : low, limits.lower()),
                        limits.most() == null ? null : criterion(wanted, this == COLDEST ? low : high, limits.upper()))
                .flatMap(Stream::ofNullable)
                .toList();
    }

    private static Criterion criterion(ThermalValue wanted, Read read, Limits limits) {
        return Criterion.of(
                Phrase.of("judged.of-sensor", wanted.named(), read.sensor()), read.value(), wanted.unit(), limits);
    }
}
