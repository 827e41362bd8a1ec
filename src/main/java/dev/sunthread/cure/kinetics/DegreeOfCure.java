package dev.sunthread.cure.kinetics;

import dev.sunthread.cure.profile.Segment;
import java.util.List;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/** How far a reaction has gone at the end of a profile, from 0 to 1. */
public final class DegreeOfCure {

    private static final double SHORTEST_STEP = 1e-9;
    private static final double TOLERANCE = 1e-10;

    private DegreeOfCure() {}

    /**
     * Integrates the rate along lines of temperature in degrees Celsius; each line begins a new integration, because the
     * rate has a kink where two lines meet.
     *
     * @param start how far it had gone before
     */
    public static double after(Kinetics kinetics, double start, List<Segment> celsius) {
        double[] degree = {start};
        for (Segment line : celsius) {
            if (line.seconds() > 0) {
                new DormandPrince853Integrator(SHORTEST_STEP, line.seconds(), TOLERANCE, TOLERANCE)
                        .integrate(new Along(kinetics, line), 0, degree, line.seconds(), degree);
            }
        }
        return within(degree[0]);
    }

    private static double within(double degree) {
        return Math.max(0, Math.min(1, degree));
    }

    private record Along(Kinetics kinetics, Segment line) implements FirstOrderDifferentialEquations {

        @Override
        public int getDimension() {
            return 1;
        }

        @Override
        public void computeDerivatives(double t, double[] degree, double[] rate) {
            rate[0] = kinetics.rate(Arrhenius.kelvin(line.at(line.start() + t)), within(degree[0]));
        }
    }
}
