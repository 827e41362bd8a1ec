package dev.sunthread.electrical.curve;

import dev.sunthread.electrical.curve.Curve.Point;
import java.util.function.UnaryOperator;

/**
 * How far a move may fold a curve back behind a point. Cooler cells of less resistance make the voltage of a strong current
 * backwards fall, so that the curve meets the axis at a higher voltage than that of a point beyond it.
 */
final class Fold {

    private Fold() {}

    /** In volts; nought where the next point shows that the moved curve does not turn before it. */
    static double volts(Curve curve, int i, UnaryOperator<Point> move) {
        Point here = move.apply(point(curve, i));
        boolean turnsLater =
                i + 1 < curve.size() && move.apply(point(curve, i + 1)).volts() > here.volts();
        double level = withoutCurrent(curve.volts(i), move);
        if (turnsLater || !(level > curve.amperes(i))) {
            return 0;
        }
        return Math.max(0, move.apply(new Point(curve.volts(i), level)).volts() - here.volts());
    }

    private static Point point(Curve curve, int i) {
        return new Point(curve.volts(i), curve.amperes(i));
    }

    /** The current that is none once it is moved; no procedure has it other than in proportion. */
    private static double withoutCurrent(double volts, UnaryOperator<Point> move) {
        double none = move.apply(new Point(volts, 0)).amperes();
        double one = move.apply(new Point(volts, 1)).amperes();
        return -none / (one - none);
    }
}
