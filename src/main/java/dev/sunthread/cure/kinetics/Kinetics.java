package dev.sunthread.cure.kinetics;

/** How fast a reaction goes on. */
public interface Kinetics {

    /**
     * The rate per second.
     *
     * @param degree how far it has gone, from 0 to 1
     */
    double rate(double kelvin, double degree);
}
