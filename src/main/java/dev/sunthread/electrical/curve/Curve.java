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
    private final double[] bounds;
    private final double[] rounded;
    private final List<Phrase> remarks;

    Curve(double[] volts, double[] amperes, double[] bounds, double[] rounded, List<Phrase> remarks) {
        this.volts = volts;
        this.amperes = amperes;
        this.bounds = bounds;
        this.rounded = rounded;
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

    /** How far the current of a point may lie beside the truth, in amperes. */
    double bound(int i) {
        return bounds[i];
    }

    /** The part of the bound that may be the same for many points together, in amperes. */
    double rounded(int i) {
        return rounded[i];
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
        return moved(move, List.of());
    }

    /**
     * The same curve with every point moved.
     *
     * @param others moves that may be the true one as well
     */
    public Curve moved(UnaryOperator<Point> move, List<UnaryOperator<Point>> others) {
        Bounded[] points = IntStream.range(0, volts.length)
                .mapToObj(i -> moved(i, move, others))
                .sorted(java.util.Comparator.comparingDouble(
                        point -> point.point().volts()))
                .toArray(Bounded[]::new);
        return new Curve(
                Arrays.stream(points).mapToDouble(p -> p.point().volts()).toArray(),
                Arrays.stream(points).mapToDouble(p -> p.point().amperes()).toArray(),
                Arrays.stream(points).mapToDouble(Bounded::bound).toArray(),
                Arrays.stream(points).mapToDouble(Bounded::rounded).toArray(),
                remarks);
    }

    private record Bounded(Point point, double bound, double rounded) {}

    /** What moves a point along the voltage counts by how steep the curve is there. */
    private Bounded moved(int i, UnaryOperator<Point> move, List<UnaryOperator<Point>> others) {
        Point point = move.apply(new Point(volts[i], amperes[i]));
        double steep = Scatter.steepest(volts, amperes, i);
        double bound = apart(point, move.apply(new Point(volts[i], amperes[i] + bounds[i])), steep);
        double together = bounds[i] == 0 ? 0 : bound * rounded[i] / bounds[i];
        for (UnaryOperator<Point> other : others) {
            double apart = apart(point, other.apply(new Point(volts[i], amperes[i])), steep);
            bound += apart;
            together += apart;
        }
        double folded = 2 * steep * Fold.volts(this, i, move);
        return new Bounded(point, bound + folded, together + folded);
    }

    private static double apart(Point one, Point other, double steep) {
        return Math.abs(one.amperes() - other.amperes()) + 2 * steep * Math.abs(one.volts() - other.volts());
    }

    /** One point of a curve. */
    public record Point(double volts, double amperes) {}
}
