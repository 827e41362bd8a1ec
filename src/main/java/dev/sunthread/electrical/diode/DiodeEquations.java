package dev.sunthread.electrical.diode;

import dev.sunthread.electrical.curve.Curve;
import org.apache.commons.math3.fitting.leastsquares.MultivariateJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;

/**
 * The residuals of a curve and how they change with the parameters: photo current, logarithm of the saturation current,
 * slope, series resistance, shunt conductance.
 */
final class DiodeEquations implements MultivariateJacobianFunction {

    static final int PARAMETERS = 5;

    private final double[] volts;
    private final double[] amperes;
    private final Residual residual;

    DiodeEquations(Curve curve, Residual residual) {
        this.volts = curve.volts();
        this.amperes = curve.amperes();
        this.residual = residual;
    }

    static SingleDiode diode(RealVector p) {
        return new SingleDiode(p.getEntry(0), Math.exp(p.getEntry(1)), p.getEntry(2), p.getEntry(3), p.getEntry(4));
    }

    static double[] parameters(SingleDiode diode) {
        return new double[] {
            diode.photo(), Math.log(diode.saturation()), diode.slope(), diode.series(), diode.conductance()
        };
    }

    @Override
    public Pair<RealVector, RealMatrix> value(RealVector point) {
        SingleDiode diode = diode(point);
        double[] left = new double[volts.length];
        double[][] changes = new double[volts.length][];
        for (int i = 0; i < volts.length; i++) {
            boolean implicit = residual == Residual.IMPLICIT;
            double current = implicit ? amperes[i] : diode.current(volts[i]);
            left[i] = implicit ? diode.residual(volts[i], current) : current - amperes[i];
            changes[i] = changes(diode, volts[i], current);
        }
        return new Pair<>(new ArrayRealVector(left, false), new Array2DRowRealMatrix(changes, false));
    }

    /** Of the equation at a current; of the model's current by how that keeps the equation at nought. */
    private double[] changes(SingleDiode diode, double volts, double current) {
        double junction = volts + current * diode.series();
        double passed = diode.saturation() * Math.exp(junction / diode.slope());
        double[] changes = {
            1,
            -(passed - diode.saturation()),
            passed * junction / (diode.slope() * diode.slope()),
            -passed * current / diode.slope() - current * diode.conductance(),
            -junction
        };
        if (residual == Residual.MODEL_CURRENT) {
            double perAmpere = diode.perAmpere(volts, current);
            for (int i = 0; i < PARAMETERS; i++) {
                changes[i] /= -perAmpere;
            }
        }
        return changes;
    }
}
