package dev.sunthread.cure.profile;

import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Unusable;
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

    /** @throws Unusable if there is none, one is no number, or times repeat or go backwards */
    public static Readings of(double[] seconds, double[] values) {
        if (seconds.length == 0 || seconds.length != values.length) {
            throw new Unusable(
                    Phrase.of("judged.readings.uneven", count(seconds.length), count(values.length)),
                    Phrase.of("judged.readings.uneven.remedy"));
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
            throw new Unusable(
                    Phrase.of("judged.readings.no-number", count(i + 1), String.valueOf(value), String.valueOf(second)),
                    Phrase.of("judged.readings.no-number.remedy"));
        }
    }

    private static void timeGoesForward(int i, double before, double second) {
        if (second <= before) {
            throw new Unusable(
                    Phrase.of(
                            second == before ? "judged.readings.same-time" : "judged.readings.earlier",
                            count(i + 1),
                            String.valueOf(second)),
                    Phrase.of("judged.readings.order.remedy"));
        }
    }

    private static String count(int number) {
        return String.valueOf(number);
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
