package dev.sunthread.cure.kinetics;

import dev.sunthread.cure.profile.Segment;
import java.util.List;

/** The rate falls with what is left to react: {@code k (1 - a)^n}; what is spent is the integral of k. */
public record NthOrder(Arrhenius k, double order) implements Kinetics {

    @Override
    public double drive(double kelvin, double degree) {
        return k.at(kelvin);
    }

    @Override
    public double after(double start, List<Segment> celsius) {
        double driven = AlongHeat.integral(k.energy(), celsius, degrees -> k.at(Arrhenius.kelvin(degrees)));
        Spent spent = new Spent(order);
        return spent.degree(spent.at(start) + driven);
    }
}
