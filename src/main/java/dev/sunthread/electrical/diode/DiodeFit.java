package dev.sunthread.electrical.diode;

import dev.sunthread.electrical.curve.Curve;
import dev.sunthread.electrical.curve.CurveMethod;
import dev.sunthread.electrical.curve.CurveNumbers;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Unusable;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresProblem;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.RealVector;

/** Fits the model of one diode to a curve by least squares (Levenberg and Marquardt), from several starts. */
public final class DiodeFit {

    private static final double TOLERANCE = 1e-13;
    private static final int STEPS = 2_000;
    private static final int FEWEST_STEPS = 50;
    /** How many currents of the model are computed at most for one start. */
    private static final int CURRENTS = 100_000;
    /** The slope of the diode as parts of the open-circuit voltage that good and bad cells have. */
    private static final double[] SLOPES = {1 / 12.0, 1 / 15.0, 1 / 20.0, 1 / 28.0, 1 / 40.0};

    private DiodeFit() {}

    /** @throws Unusable if no start leads to a fit, or the curve has too few points */
    public static FittedDiode of(Curve curve, Residual residual) {
        if (curve.size() <= DiodeEquations.PARAMETERS) {
            throw new Unusable(
                    Phrase.of("judged.diode.few-points", String.valueOf(curve.size())),
                    Phrase.of("judged.diode.few-points.remedy"));
        }
        CurveNumbers numbers = CurveNumbers.of(curve, CurveMethod.USUAL);
        return DoubleStream.of(SLOPES)
                .mapToObj(part -> start(numbers, part * numbers.openCircuit()))
                .flatMap(start -> fitted(curve, start, residual).stream())
                .min(Comparator.comparingDouble(FittedDiode::rootMeanSquare))
                .orElseThrow(() ->
                        new Unusable(Phrase.of("judged.diode.none-fits"), Phrase.of("judged.diode.none-fits.remedy")));
    }

    private static SingleDiode start(CurveNumbers numbers, double slope) {
        double saturation = numbers.shortCircuit() / Math.expm1(numbers.openCircuit() / slope);
        double series = Math.max(0, numbers.series() - slope / numbers.shortCircuit()) / 2;
        return new SingleDiode(
                numbers.shortCircuit(), saturation, slope, series, Math.max(1e-9, 1 / Math.abs(numbers.shunt())));
    }

    private static Optional<FittedDiode> fitted(Curve curve, SingleDiode start, Residual residual) {
        try {
            LeastSquaresProblem problem = new LeastSquaresBuilder()
                    .model(new DiodeEquations(curve, residual))
                    .target(new double[curve.size()])
                    .start(DiodeEquations.parameters(start))
                    .parameterValidator(DiodeFit::physical)
                    .lazyEvaluation(false)
                    .maxEvaluations(steps(curve))
                    .maxIterations(steps(curve))
                    .build();
            var optimum = new LevenbergMarquardtOptimizer()
                    .withCostRelativeTolerance(TOLERANCE)
                    .withParameterRelativeTolerance(TOLERANCE)
                    .optimize(problem);
            return Optional.of(optimum)
                    .filter(found -> Double.isFinite(found.getRMS()))
                    .map(found -> FittedDiode.of(found, residual, curve.size()));
        } catch (MathIllegalStateException | MathIllegalArgumentException noFit) {
            return Optional.empty();
        }
    }

    private static int steps(Curve curve) {
        return Math.max(FEWEST_STEPS, Math.min(STEPS, CURRENTS / curve.size()));
    }

    /** No resistance is negative and the diode's current grows with its voltage. */
    private static RealVector physical(RealVector point) {
        point.setEntry(2, Math.max(1e-4, point.getEntry(2)));
        point.setEntry(3, Math.max(0, point.getEntry(3)));
        point.setEntry(4, Math.max(0, point.getEntry(4)));
        return point;
    }
}
