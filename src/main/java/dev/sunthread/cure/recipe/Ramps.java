package dev.sunthread.cure.recipe;

import dev.sunthread.cure.profile.Readings;
import java.util.stream.IntStream;

/** How fast readings change. */
final class Ramps {

    private Ramps() {}

    /**
     * The fastest rise over a stretch of time, per second. Between neighbouring readings noise looks like speed, so the
     * stretch is part of the recipe. On lines, the fastest stretch begins or ends at a reading.
     */
    static double fastest(Readings readings, double over) {
        double stretch = Math.min(over, readings.end() - readings.start());
        if (stretch <= 0) {
            return 0;
        }
        return IntStream.range(0, readings.size())
                .mapToDouble(readings::second)
                .flatMap(second -> java.util.stream.DoubleStream.of(second, second - stretch))
                .filter(begin -> begin >= readings.start() && begin + stretch <= readings.end() + 1e-9)
                .map(begin -> (readings.at(begin + stretch) - readings.at(begin)) / stretch)
                .max()
                .orElse(0);
    }
}
