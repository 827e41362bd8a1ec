package dev.sunthread.cure.kinetics;

/**
 * By how much diffusion slows a reaction: {@code 1 + exp(C (a - (a0 + aT T)))}, where {@code a0 + aT T} is the degree
 * at which the material turns to glass at temperature T.
 */
public record Diffusion(double sharpness, double atZero, double perKelvin) {

    /** @throws IllegalArgumentException if heat would turn the material to glass */
    public Diffusion {
        if (!(sharpness >= 0) || !(perKelvin >= 0)) {
            throw new IllegalArgumentException("diffusion does not slow by " + sharpness + " and " + perKelvin);
        }
    }

    /** A reaction that diffusion never slows. */
    public static final Diffusion NONE = new Diffusion(0, 0, 0);

    double slowing(double kelvin, double degree) {
        return sharpness == 0 ? 1 : 1 + Math.exp(sharpness * (degree - (atZero + perKelvin * kelvin)));
    }
}
