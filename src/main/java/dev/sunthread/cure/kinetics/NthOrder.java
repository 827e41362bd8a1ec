package dev.sunthread.cure.kinetics;

/** The rate falls with what is left to react: {@code k (1 - a)^n}. */
public record NthOrder(Arrhenius k, double order) implements Kinetics {

    @Override
    public double rate(double kelvin, double degree) {
        return k.at(kelvin) * Math.pow(1 - degree, order);
    }
}
