package dev.sunthread.cure.kinetics;

/**
 * What has reacted speeds the reaction up, by Kamal and Sourour (1976): {@code (k1 + k2 a^m) (1 - a)^n}, slowed where
 * the network becomes too stiff to let reactants meet.
 */
public record Autocatalytic(Arrhenius k1, Arrhenius k2, double m, double n, Diffusion diffusion) implements Kinetics {

    @Override
    public double rate(double kelvin, double degree) {
        return (k1.at(kelvin) + k2.at(kelvin) * Math.pow(degree, m))
                * Math.pow(1 - degree, n)
                / diffusion.slowing(kelvin, degree);
    }
}
