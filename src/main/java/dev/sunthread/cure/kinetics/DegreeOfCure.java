package dev.sunthread.cure.kinetics;

import dev.sunthread.cure.profile.Segment;
import java.util.List;

/** How far a reaction has gone at the end of a profile, from 0 to 1. */
public final class DegreeOfCure {

    private DegreeOfCure() {}

    /**
     * How far it has gone along lines of temperature in degrees Celsius.
     *
     * @param start how far it had gone before
     * @throws RuntimeException of numbers, after a bounded number of steps, if they do not reach
     */
    public static double after(Kinetics kinetics, double start, List<Segment> celsius) {
        if (!(start >= 0 && start <= 1)) {
            throw new IllegalArgumentException("a reaction does not start at a degree of " + start);
        }
        return start == 1 ? 1 : within(kinetics.after(start, celsius));
    }

    private static double within(double degree) {
        if (Double.isNaN(degree)) {
            throw new ArithmeticException("no degree of cure comes out");
        }
        return Math.max(0, Math.min(1, degree));
    }
}
