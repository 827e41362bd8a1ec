package dev.sunthread.cure.kinetics;

import dev.sunthread.cure.profile.Segment;
import java.util.List;

/** How fast a reaction goes on: by a drive, slowed by what is left of it to the power of an order. */
public interface Kinetics {

    /** The exponent n of what is left. */
    double order();

    /**
     * The rate per second, as if all were left to react.
     *
     * @param degree how far it has gone, from 0 to 1
     */
    double drive(double kelvin, double degree);

    /** The rate per second: {@code drive (1 - a)^n}. */
    default double rate(double kelvin, double degree) {
        return drive(kelvin, degree) * Math.pow(1 - degree, order());
    }

    /**
     * How far it has gone along lines of temperature in degrees Celsius.
     *
     * @param start from where, from 0 to less than 1
     * @throws IllegalStateException or ArithmeticException if numbers do not reach
     */
    default double after(double start, List<Segment> celsius) {
        return new DrivenPath(this).after(start, celsius);
    }
}
