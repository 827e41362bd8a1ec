package dev.sunthread.electrical.curve;

import java.util.stream.IntStream;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * The line of least squares through some points, with current over voltage.
 *
 * @param atZero the current at no voltage
 * @param slope amperes per volt
 */
record Line(double atZero, double slope) {

    static Line through(Curve curve, IntStream points) {
        SimpleRegression regression = new SimpleRegression();
        points.forEach(i -> regression.addData(curve.volts(i), curve.amperes(i)));
        return new Line(regression.getIntercept(), regression.getSlope());
    }

    /** The resistance of the slope in ohms; infinite for a level line. */
    double ohms() {
        return slope == 0 ? Double.POSITIVE_INFINITY : -1 / slope;
    }
}
