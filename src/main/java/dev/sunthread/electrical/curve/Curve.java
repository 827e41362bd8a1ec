package dev.sunthread.electrical.curve;

import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Unusable;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/** Points of one sweep by rising voltage, with what was odd about it as it came. */
public final class Curve {

    private final double[] volts;
    private final double[] amperes;
    private final List<Phrase> remarks;

    Curve(double[] volts, double[] amperes, List<Phrase> remarks) {
        this.volts = volts;
        this.amperes = amperes;
        this.remarks = List.copyOf(remarks);
    }

    /** @throws Unusable if nothing can be made of the points */
    public static Curve of(double[] volts, double[] amperes) {
        return CheckedSweep.of(volts, amperes);
    }

    /**
     * A curve without light, forward current positive; one told with the sign of a light source is turned over.
     *
     * @throws Unusable if nothing can be made of the points
     */
    public static Curve dark(double[] volts, double[] amperes) {
        return CheckedSweep.dark(volts, amperes);
    }

    /** What was odd about the sweep, in words. */
    public List<Phrase> remarks() {
        return remarks;
    }

    public int size() {
        return volts.length;
    }

    public double volts(int i) {
        return volts[i];
    }

    public double amperes(int i) {
        return amperes[i];
    }

    public double watts(int i) {
        return volts[i] * amperes[i];
    }

    public double[] volts() {
        return volts.clone();
    }

    public double[] amperes() {
        return amperes.clone();
    }

    /** The current at a voltage between two points, on the line between them. */
    double amperesAt(double voltage) {
        int i = Arrays.binarySearch(volts, voltage);
        if (i >= 0) {
            return amperes[i];
        }
        int behind = -i - 1;
        return amperes[behind - 1]
                + (voltage - volts[behind - 1])
                        / (volts[behind] - volts[behind - 1])
                        * (amperes[behind] - amperes[behind - 1]);
    }

    /** The same curve with every point moved. */
    public Curve moved(UnaryOperator<Point> move) {
        Point[] points = IntStream.range(0, volts.length)
                .mapToObj(i -> move.apply(new Point(volts[i], amperes[i])))
                .sorted(java.util.Comparator.comparingDouble(Point::volts))
                .toArray(Point[]::new);
        return new Curve(
                Arrays.stream(points).mapToDouble(Point::volts).toArray(),
                Arrays.stream(points).mapToDouble(Point::amperes).toArray(),
                remarks);
    }

    /** One point of a curve. */
    public record Point(double volts, double amperes) {}
}
