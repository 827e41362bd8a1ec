package dev.sunthread.cure.light;

import dev.sunthread.cure.profile.Coverage;
import dev.sunthread.cure.profile.Segment;
import dev.sunthread.cure.profile.SensorReadings;
import dev.sunthread.kernel.verdict.Span;
import java.util.Collection;

/** Irradiance times time, in mJ/cm2. */
public final class Dose {

    private Dose() {}

    /** A constant irradiance in mW/cm2 for some seconds. */
    public static double of(double irradiance, double seconds) {
        return irradiance * seconds;
    }

    /** Between the readings of a radiometer before and after, whichever is the lower: a lamp ages, or is changed. */
    public static Span between(RadiometerReading before, RadiometerReading after, double seconds) {
        return Span.between(before.irradiance(), after.irradiance()).times(seconds);
    }

    /** What a sensor in mW/cm2 saw during a run; the light in gaps counts from none on, without a bound. */
    public static Span along(SensorReadings sensor, double run, double longestGap) {
        Coverage read = Coverage.of(sensor.readings(), run, longestGap);
        double least = integral(read.plus(-sensor.error().high()));
        double most = integral(read.plus(-sensor.error().low()));
        return Span.between(least, read.isWhole() ? most : Double.POSITIVE_INFINITY);
    }

    private static double integral(Coverage coverage) {
        return coverage.told().stream().mapToDouble(Dose::area).sum();
    }

    /** No light is less than none, whatever a sensor reads in the dark. */
    private static double area(Segment line) {
        Span lit = line.within(new Span(0, Double.MAX_VALUE));
        return (line.at(lit.low()) + line.at(lit.high())) / 2 * (lit.high() - lit.low());
    }

    /** The doses of several cures of one bond. */
    public static Span sum(Collection<Span> doses) {
        return doses.stream().reduce(Span.exactly(0), Span::plus);
    }
}
