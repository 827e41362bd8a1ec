package dev.sunthread.electrical.curve;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * How far the currents of a sweep may lie beside the truth: by what they scatter about smooth pieces of four points, and by
 * the last digit that the rig tells. The fewer points there are, the more often the scatter is taken.
 */
public final class Scatter {

    private static final int PIECE = 4;
    private static final int DIGITS = 8;
    private static final double TO_DEVIATION = 1.4826;

    private Scatter() {}

    /** How many standard deviations count that were estimated from a number of values. */
    public static double factor(int values) {
        double few = 10.0 / Math.max(1, values);
        return 8 * (1 + few * few);
    }

    /** A bound for each current, in amperes; points by rising voltage. */
    static double[] of(double[] volts, double[] amperes, double[] rounded) {
        int pieces = volts.length - PIECE + 1;
        double[] left = IntStream.range(0, Math.max(0, pieces))
                .mapToDouble(i -> Math.abs(left(volts, amperes, i)))
                .sorted()
                .toArray();
        double usual = left.length == 0 ? 0 : left[left.length / 2] * TO_DEVIATION * factor(left.length);
        return DoubleStream.of(rounded).map(digit -> usual + digit).toArray();
    }

    /**
     * The part of each bound that is of rounding, which may be the same for many points together.
     *
     * @param voltageDigit the last digit of what was read, as {@link #digit} finds it
     */
    static double[] rounded(double[] volts, double[] amperes, double voltageDigit, double currentDigit) {
        double current = currentDigit / 2;
        double voltage = voltageDigit / 2;
        return IntStream.range(0, volts.length)
                .mapToDouble(i -> current + voltage * steepest(volts, amperes, i))
                .toArray();
    }

    /** What is left of four points beside the best parabola, in parts of what noise would leave. */
    private static double left(double[] volts, double[] amperes, int first) {
        double sum = 0;
        double squares = 0;
        for (int i = first; i < first + PIECE; i++) {
            double weight = 1;
            for (int k = first; k < first + PIECE; k++) {
                weight *= k == i ? 1 : (volts[first + PIECE - 1] - volts[first]) / (volts[i] - volts[k]);
            }
            sum += weight * amperes[i];
            squares += weight * weight;
        }
        return sum / Math.sqrt(squares);
    }

    /** The last digit that any of the values has; nought if they have more than a rig tells. */
    static double digit(double[] values) {
        return IntStream.rangeClosed(0, DIGITS)
                .mapToDouble(digits -> Math.pow(10, -digits))
                .filter(step -> DoubleStream.of(values)
                        .allMatch(value -> Math.abs(value / step - Math.rint(value / step)) < 1e-6))
                .findFirst()
                .orElse(0);
    }

    static double steepest(double[] volts, double[] amperes, int i) {
        return IntStream.of(i - 1, i)
                .filter(k -> k >= 0 && k + 1 < volts.length && volts[k + 1] > volts[k])
                .mapToDouble(k -> Math.abs((amperes[k + 1] - amperes[k]) / (volts[k + 1] - volts[k])))
                .max()
                .orElse(0);
    }

    /** Root of the sum of squares. */
    static double together(double... parts) {
        return Math.sqrt(Arrays.stream(parts).map(part -> part * part).sum());
    }
}
