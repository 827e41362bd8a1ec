package dev.sunthread.cure.kinetics;

/**
 * What has reacted speeds the reaction up, by Kamal and Sourour (1976): {@code (k1 + k2 a^m) (1 - a)^n}, slowed where
 * the network becomes too stiff to let reactants meet.
 */
public record Autocatalytic(Arrhenius k1, Arrhenius k2, double m, double order, Diffusion diffusion)
        implements Kinetics {

    /** @throws IllegalArgumentException if nothing that reacts would be without bound at the start */
    public Autocatalytic {
        if (!(m >= 0)) {
            throw new IllegalArgumentException("what has reacted has the exponent " + m);
        }
    }

    @Override
    public double drive(double kelvin, double degree) {
        return (k1.at(kelvin) + k2.at(kelvin) * Math.pow(degree, m)) / diffusion.slowing(kelvin, degree);
    }
}
