package dev.sunthread.cure.profile;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/**
 * How much of a run its readings tell. Nothing outside of the run counts.
 *
 * @param told in order of time, the lines between readings near enough to each other, and level ones from the run's ends
 *     to readings near them; cut to the run
 * @param unknown seconds of the run that no line tells: gaps between readings, before the first, behind the last
 */
public record Coverage(List<Segment> told, double unknown) {

    private static final double ROUNDED = 1e-9;

    /**
     * What readings tell of a run.
     *
     * @param run how long it took, in seconds
     * @param longestGap up to what distance, in seconds, two readings tell what was between them
     */
    public static Coverage of(Readings readings, double run, double longestGap) {
        List<Segment> lines = new ArrayList<>();
        lines.add(level(Math.min(0, readings.start()), readings.start(), readings.value(0)));
        lines.addAll(readings.segments());
        lines.add(level(readings.end(), Math.max(run, readings.end()), readings.value(readings.size() - 1)));
        List<Segment> told = new ArrayList<>();
        double unknown = 0;
        for (Segment line : lines) {
            double from = Math.max(0, line.start());
            double to = Math.min(run, line.end());
            if (from < to && line.seconds() > longestGap) {
                unknown += to - from;
            } else if (from < to) {
                told.add(from == line.start() && to == line.end() ? line : line.part(from, to));
            }
        }
        return new Coverage(List.copyOf(told), unknown);
    }

    private static Segment level(double from, double to, double value) {
        return new Segment(from, value, to, value);
    }

    public boolean isWhole() {
        return unknown == 0;
    }

    /** When lines begin and end. */
    public DoubleStream instants() {
        return told.stream().flatMapToDouble(line -> DoubleStream.of(line.start(), line.end()));
    }

    /** The value at an instant, if a line tells it. */
    public OptionalDouble at(double second) {
        return over(second, second)
                .map(line -> OptionalDouble.of(line.at(Math.max(line.start(), Math.min(line.end(), second)))))
                .orElse(OptionalDouble.empty());
    }

    /** The line that tells of all the time between two instants, if one does. */
    Optional<Segment> over(double from, double to) {
        int found = Collections.binarySearch(
                told, level(from, from, 0), (one, other) -> Double.compare(one.start(), other.start()));
        int first = Math.max(0, found >= 0 ? found - 1 : -found - 2);
        return told.subList(first, Math.min(told.size(), first + 2)).stream()
                .filter(line -> line.start() <= from + ROUNDED && line.end() >= to - ROUNDED)
                .findFirst();
    }

    /** The highest value that is told; nothing if none is. */
    public OptionalDouble most() {
        return told.stream()
                .mapToDouble(line -> Math.max(line.first(), line.last()))
                .max();
    }

    /** The same lines with something added to each value. */
    public Coverage plus(double added) {
        return new Coverage(
                told.stream()
                        .map(line -> new Segment(line.start(), line.first() + added, line.end(), line.last() + added))
                        .toList(),
                unknown);
    }
}
