package dev.sunthread.cure.recipe;

import dev.sunthread.cure.profile.Coverage;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/** How fast readings change. */
final class Ramps {

    private Ramps() {}

    /**
     * The fastest rise over a stretch of time, per second; negative without bound if no stretch has both of its ends told.
     * Between neighbouring readings noise looks like speed, so the stretch is part of the recipe. On lines, the fastest
     * stretch begins or ends where a line does.
     *
     * @param direction 1 for rises, -1 for falls
     */
    static double fastest(Coverage coverage, int direction, double stretch) {
        return coverage.instants()
                .flatMap(second -> DoubleStream.of(second, second - stretch))
                .map(begin -> rise(coverage, begin, begin + stretch) * direction / stretch)
                .filter(rise -> !Double.isNaN(rise))
                .max()
                .orElse(Double.NEGATIVE_INFINITY);
    }

    private static double rise(Coverage coverage, double from, double to) {
        OptionalDouble before = coverage.at(from);
        OptionalDouble behind = coverage.at(to);
        return before.isPresent() && behind.isPresent() ? behind.getAsDouble() - before.getAsDouble() : Double.NaN;
    }
}
