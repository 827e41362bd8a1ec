package dev.sunthread.electrical.diode;

import dev.sunthread.electrical.curve.Scatter;
import dev.sunthread.kernel.verdict.Span;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;

/**
 * A model fitted to a curve, with the residual that was made small and its root mean square in amperes.
 *
 * @param seriesOff how far the series resistance may lie beside the fitted one, in ohms, by what the points scatter
 * @param conductanceOff how far the conductance of the shunt may, in siemens
 */
public record FittedDiode(
        SingleDiode diode, Residual residual, double rootMeanSquare, double seriesOff, double conductanceOff) {

    static FittedDiode of(Optimum found, Residual residual, int points) {
        SingleDiode diode = DiodeEquations.diode(found.getPoint());
        int free = points - DiodeEquations.PARAMETERS;
        double scatter = found.getRMS() * Math.sqrt((double) points / free) * Scatter.factor(free);
        try {
            double[] off = found.getSigma(0).toArray();
            return new FittedDiode(diode, residual, found.getRMS(), off[3] * scatter, off[4] * scatter);
        } catch (MathIllegalArgumentException undetermined) {
            double any = Double.POSITIVE_INFINITY;
            return new FittedDiode(diode, residual, found.getRMS(), any, any);
        }
    }

    /** The series resistance in ohms. */
    public Span series() {
        return new Span(Math.max(0, diode.series() - seriesOff), diode.series() + seriesOff);
    }

    /** The resistance of the shunt in ohms. */
    public Span shunt() {
        double least = diode.conductance() - conductanceOff;
        double most = diode.conductance() + conductanceOff;
        return new Span(most > 0 ? 1 / most : 0, least > 0 ? 1 / least : Double.POSITIVE_INFINITY);
    }
}
