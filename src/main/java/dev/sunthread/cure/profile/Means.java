package dev.sunthread.cure.profile;

import dev.sunthread.kernel.verdict.Span;
import java.util.List;

/** The mean of several sensors at every instant that all of them tell. */
public final class Means {

    private Means() {}

    /** The mean of sensors that were read at the same time; of one sensor, the sensor itself. */
    public static SensorReadings of(List<SensorReadings> sensors) {
        if (sensors.size() == 1) {
            return sensors.get(0);
        }
        double from =
                sensors.stream().mapToDouble(s -> s.readings().start()).max().orElseThrow();
        double to = sensors.stream().mapToDouble(s -> s.readings().end()).min().orElseThrow();
        double[] seconds = sensors.stream()
                .flatMapToDouble(s ->
                        java.util.stream.IntStream.range(0, s.readings().size()).mapToDouble(s.readings()::second))
                .filter(second -> second >= from && second <= to)
                .sorted()
                .distinct()
                .toArray();
        double[] values = java.util.Arrays.stream(seconds)
                .map(second -> sensors.stream()
                        .mapToDouble(s -> s.readings().at(second))
                        .average()
                        .orElseThrow())
                .toArray();
        return new SensorReadings("mean of all", null, Readings.of(seconds, values), error(sensors));
    }

    private static Span error(List<SensorReadings> sensors) {
        return sensors.stream()
                .map(SensorReadings::error)
                .reduce(Span.exactly(0), Span::plus)
                .times(1.0 / sensors.size());
    }
}
