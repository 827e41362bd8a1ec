package dev.sunthread.cure.recipe;

import dev.sunthread.cure.profile.Means;
import dev.sunthread.cure.profile.RecordingRule;
import dev.sunthread.cure.profile.SensorReadings;
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
    MEAN,
    /** For a bond the sensor nearest to its position counts, for a whole load the coldest and the hottest. */
    NEAREST;

    private static final Comparator<Read> COLDEST_FIRST =
            Comparator.comparingDouble(read -> read.value().low());
    private static final Comparator<Read> HOTTEST_FIRST =
            Comparator.comparingDouble(read -> -read.value().high());

    private record Read(String sensor, Span value) {}

    /** One criterion for each side of the limits, over all the cures. */
    List<Criterion> judge(ThermalValue wanted, List<Measured> cures, RecordingRule recording) {
        Read low = read(wanted, cures, recording.longestGap(), COLDEST_FIRST);
        Read high = read(wanted, cures, recording.longestGap(), HOTTEST_FIRST);
        Limits limits = wanted.limits();
        return Stream.of(
                        limits.least() == null
                                ? null
                                : criterion(wanted, cures, this == HOTTEST ? high : low, limits.lower()),
                        limits.most() == null
                                ? null
                                : criterion(wanted, cures, this == COLDEST ? low : high, limits.upper()))
                .flatMap(Stream::ofNullable)
                .toList();
    }

    /** What was reached after all the cures, each by the sensor that comes first. */
    private Read read(ThermalValue wanted, List<Measured> cures, double longestGap, Comparator<Read> first) {
        Read reached = new Read("", wanted.nothing());
        for (Measured cure : cures) {
            Span before = reached.value();
            reached = counted(cure)
                    .map(sensor -> new Read(
                            sensor.sensor(),
                            wanted.after(before, new TemperatureOfRun(sensor, cure.seconds(), longestGap))))
                    .min(first)
                    .orElseGet(() -> new Read("", wanted.unknown(before)));
        }
        return reached;
    }

    private Stream<SensorReadings> counted(Measured cure) {
        return this == MEAN && !cure.temperatures().isEmpty()
                ? Stream.of(Means.of(cure.temperatures()))
                : cure.temperatures().stream();
    }

    private static Criterion criterion(ThermalValue wanted, List<Measured> cures, Read read, Limits limits) {
        Phrase name = cures.size() == 1
                ? Phrase.of("judged.of-sensor", wanted.named(), read.sensor())
                : Phrase.of("judged.of-cures", wanted.named(), String.valueOf(cures.size()));
        return Criterion.of(name, read.value(), wanted.unit(), limits);
    }
}
