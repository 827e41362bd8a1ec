package dev.sunthread.cure.kinetics;

/**
 * What of a reaction's drive is spent when it has gone some way: {@code integral of da / (1 - a)^n}. It grows as fast as the
 * drive is strong and never becomes stiff near the end, whatever the order.
 */
record Spent(double order) {

    private static final double NEAR_FIRST = 1e-6;

    /** Of a degree below 1. */
    double at(double degree) {
        double logLeft = Math.log1p(-degree);
        double power = 1 - order;
        return Math.abs(power) < NEAR_FIRST ? -logLeft : -Math.expm1(power * logLeft) / power;
    }

    /** The degree at which that much is spent; below the first order it ends at 1. */
    double degree(double spent) {
        double power = 1 - order;
        if (Math.abs(power) < NEAR_FIRST) {
            return -Math.expm1(-spent);
        }
        return power * spent >= 1 ? 1 : -Math.expm1(Math.log1p(-power * spent) / power);
    }
}
