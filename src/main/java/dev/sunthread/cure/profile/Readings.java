package dev.sunthread.cure.profile;

import dev.sunthread.kernel.Refused;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What one sensor read at instants in seconds after a start, each later than the one before. */
public final class Readings {

    private final double[] seconds;
    private final double[] values;

    private Readings(double[] seconds, double[] values) {
        this.seconds = seconds;
        this.values = values;
    }

    /** @throws Refused if there is none, one is no number, or times repeat or go backwards */
    public static Readings of(double[] seconds, double[] values) {
        if (seconds.length == 0 || seconds.length != values.length) {
            throw new Refused(
                    seconds.length + " times stand beside " + values.length + " readings",
                    "Give one reading to each time, and at least one");
        }
        for (int i = 0; i < seconds.length; i++) {
            readingIsANumber(i, seconds[i], values[i]);
            if (i > 0) {
                timeGoesForward(i, seconds[i - 1], seconds[i]);
            }
        }
        return new Readings(seconds.clone(), values.clone());
    }

    private static void readingIsANumber(int i, double second, double value) {
        if (!Double.isFinite(second) || !Double.isFinite(value)) {
            throw new Refused(
                    "Reading " + (i + 1) + " is not a number: " + value + " at " + second + " s",
                    "Leave out readings that the logger did not take; gaps are seen by their times");
        }
    }

    private static void timeGoesForward(int i, double before, double second) {
        if (second <= before) {
            throw new Refused(
                    "Reading " + (i + 1) + " at " + second + " s is "
                            + (second == before ? "at the same time as" : "earlier than") + " the one before it",
                    "Find out which reading is right, and give each time once and in order");
        }
    }

    public int size() {
        return seconds.length;
    }

    public double second(int i) {
        return seconds[i];
    }

    public double value(int i) {
        return values[i];
    }

    public double start() {
        return seconds[0];
    }

    public double end() {
        return seconds[seconds.length - 1];
    }

    public double most() {
        return Arrays.stream(values).max().orElseThrow();
    }

    /** The value at an instant, on the line between the readings around it; the nearest one outside of them. */
    public double at(double second) {
        int i = Arrays.binarySearch(seconds, second);
        if (i >= 0) {
            return values[i];
        }
        int behind = -i - 1;
        if (behind == 0 || behind == seconds.length) {
            return values[Math.min(behind, seconds.length - 1)];
        }
        double part = (second - seconds[behind - 1]) / (seconds[behind] - seconds[behind - 1]);
        return values[behind - 1] + part * (values[behind] - values[behind - 1]);
    }

    /** The same readings with something added to each. */
    public Readings plus(double added) {
        return new Readings(seconds, Arrays.stream(values).map(v -> v + added).toArray());
    }

    /** The same readings scaled. */
    public Readings times(double factor) {
        return new Readings(seconds, Arrays.stream(values).map(v -> v * factor).toArray());
    }

    /** The lines between neighbouring readings. */
    public List<Segment> segments() {
        List<Segment> segments = new ArrayList<>(seconds.length);
        for (int i = 1; i < seconds.length; i++) {
            segments.add(new Segment(seconds[i - 1], values[i - 1], seconds[i], values[i]));
        }
        return segments;
    }
}
