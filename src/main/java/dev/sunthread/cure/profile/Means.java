package dev.sunthread.cure.profile;

import dev.sunthread.kernel.verdict.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** The mean of several sensors at every instant that all of them tell. */
public final class Means {

    private Means() {}

    /** What all sensors tell together of a run: where one has a gap, the mean has one. */
    public static Coverage of(List<Coverage> sensors, double run) {
        double[] instants = DoubleStream.concat(
                        DoubleStream.of(0, run), sensors.stream().flatMapToDouble(Coverage::instants))
                .sorted()
                .distinct()
                .toArray();
        List<Segment> told = new ArrayList<>();
        double unknown = 0;
        for (int i = 1; i < instants.length; i++) {
            Optional<Segment> mean = mean(sensors, instants[i - 1], instants[i]);
            mean.ifPresent(told::add);
            unknown += mean.isPresent() ? 0 : instants[i] - instants[i - 1];
        }
        return new Coverage(List.copyOf(told), unknown);
    }

    private static Optional<Segment> mean(List<Coverage> sensors, double from, double to) {
        double first = 0;
        double last = 0;
        for (Coverage sensor : sensors) {
            Optional<Segment> line = sensor.over(from, to);
            if (line.isEmpty()) {
                return Optional.empty();
            }
            first += line.get().at(from) / sensors.size();
            last += line.get().at(to) / sensors.size();
        }
        return Optional.of(new Segment(from, first, to, last));
    }

    /** The error of a mean of sensors with these errors. */
    public static Span error(List<SensorReadings> sensors) {
        return sensors.stream()
                .map(SensorReadings::error)
                .reduce(Span.exactly(0), Span::plus)
                .times(1.0 / sensors.size());
    }
}
