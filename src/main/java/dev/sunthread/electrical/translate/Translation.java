package dev.sunthread.electrical.translate;

import dev.sunthread.electrical.curve.Curve.Point;

/** One procedure of one edition with its coefficients. */
public interface Translation {

    /** The procedure and edition, in words. */
    String words();

    /** The conditions translated to. */
    Conditions to();

    /** A point measured under some conditions, as it would be under the wanted ones. */
    Point translate(Point measured, Measured measuredUnder);

    /**
     * What a procedure needs of the measured curve.
     *
     * @param shortCircuit its current at no voltage, in amperes
     * @param openCircuit its voltage at no current, in volts
     */
    record Measured(Conditions conditions, double shortCircuit, double openCircuit) {}
}
