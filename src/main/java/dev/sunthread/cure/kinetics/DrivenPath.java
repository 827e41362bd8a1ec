package dev.sunthread.cure.kinetics;

import dev.sunthread.cure.profile.Segment;
import java.util.List;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/**
 * Integrates what is spent along lines of temperature; each line begins a new integration, because the drive has a kink
 * where two lines meet. The number of evaluations is bounded.
 */
record DrivenPath(Kinetics kinetics) {

    private static final double SHORTEST_STEP = 1e-12;
    private static final double TOLERANCE = 1e-10;
    private static final int EVALUATIONS = 1_000_000;
    private static final int EACH_LINE = 100;

    /** @throws IllegalStateException if numbers do not reach */
    double after(double start, List<Segment> celsius) {
        Spent spent = new Spent(kinetics.order());
        double[] state = {spent.at(start)};
        int left = EVALUATIONS + EACH_LINE * celsius.size();
        for (Segment line : celsius) {
            if (line.seconds() > 0) {
                left -= integrate(spent, line, state, left);
            }
        }
        return spent.degree(state[0]);
    }

    private int integrate(Spent spent, Segment line, double[] state, int most) {
        DormandPrince853Integrator steps =
                new DormandPrince853Integrator(SHORTEST_STEP * line.seconds(), line.seconds(), TOLERANCE, TOLERANCE);
        steps.setMaxEvaluations(most);
        steps.integrate(new Along(kinetics, spent, line), 0, state, line.seconds(), state);
        return steps.getEvaluations();
    }

    private record Along(Kinetics kinetics, Spent spent, Segment line) implements FirstOrderDifferentialEquations {

        @Override
        public int getDimension() {
            return 1;
        }

        @Override
        public void computeDerivatives(double t, double[] state, double[] rate) {
            double within = Math.max(0, Math.min(line.seconds(), t));
            double kelvin = Arrhenius.kelvin(line.at(line.start() + within));
            rate[0] = kinetics.drive(kelvin, spent.degree(Math.max(0, state[0])));
            if (!(kelvin > 0) || !Double.isFinite(rate[0])) {
                throw new ArithmeticException("a rate of " + rate[0] + " at " + kelvin + " K");
            }
        }
    }
}
