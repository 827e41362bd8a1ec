package dev.sunthread.cure.recipe;

import dev.sunthread.cure.profile.Coverage;
import dev.sunthread.cure.profile.Means;
import dev.sunthread.cure.profile.Segment;
import dev.sunthread.cure.profile.SensorReadings;
import dev.sunthread.kernel.verdict.Digit;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Span;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * The temperature at one sensor through a run, with what is not known of it: gaps, and the sensor's error, which may have
 * changed meanwhile.
 *
 * @param run how long the run took, in seconds
 */
record TemperatureOfRun(String sensor, Coverage coverage, Span error, double run) {

    private static final double A_MINUTE = 60;

    static TemperatureOfRun of(SensorReadings sensor, double run, double longestGap) {
        return new TemperatureOfRun(
                sensor.sensor(), Coverage.of(sensor.readings(), run, longestGap), sensor.error(), run);
    }

    /** The mean of all sensors of a run. */
    static TemperatureOfRun mean(List<SensorReadings> sensors, double run, double longestGap) {
        List<Coverage> told = sensors.stream()
                .map(sensor -> Coverage.of(sensor.readings(), run, longestGap))
                .toList();
        return sensors.size() == 1
                ? of(sensors.get(0), run, longestGap)
                : new TemperatureOfRun("mean of all", Means.of(told, run), Means.error(sensors), run);
    }

    /** Minutes within a band: surely by every error, with no gap, to possibly by one, with all gaps. */
    Span minutesWithin(Span band) {
        double low = band.low() + error.high();
        double high = band.high() + error.low();
        double surely = low <= high ? seconds(new Span(low, high)) : 0;
        double possibly = seconds(new Span(band.low() + error.low(), band.high() + error.high()));
        return Span.between(surely / A_MINUTE, (possibly + coverage.unknown()) / A_MINUTE);
    }

    private double seconds(Span band) {
        return coverage.told().stream()
                .mapToDouble(line -> line.secondsWithin(band))
                .sum();
    }

    /** The highest temperature; in a gap it may have been any. */
    Span peak() {
        double most = coverage.most().orElse(Double.NEGATIVE_INFINITY);
        boolean whole = coverage.isWhole() && coverage.most().isPresent();
        return new Span(most - error.high(), whole ? most - error.low() : Double.POSITIVE_INFINITY);
    }

    /**
     * The fastest change over some seconds, in kelvin per minute: upwards for 1, downwards for -1. In a gap it may have
     * been any, and the error may have come or gone within the stretch.
     */
    Span fastest(int direction, double over) {
        double stretch = Math.min(over, run);
        if (stretch <= 0) {
            return new Span(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
        }
        double fastest = Ramps.fastest(coverage, direction, stretch) * A_MINUTE;
        double drift = (error.high() - error.low()) / stretch * A_MINUTE;
        return new Span(fastest - drift, coverage.isWhole() ? fastest + drift : Double.POSITIVE_INFINITY);
    }

    /**
     * What heat did: at least along the lowest temperatures with the gaps left out, at most along the highest; what it did
     * in gaps has no bound but that of the thing itself.
     */
    Span effect(ToDoubleFunction<List<Segment>> least, ToDoubleFunction<List<Segment>> most, double bound) {
        List<Segment> lowest = coverage.plus(-error.high()).told();
        List<Segment> highest = coverage.plus(-error.low()).told();
        return Span.between(least.applyAsDouble(lowest), coverage.isWhole() ? most.applyAsDouble(highest) : bound);
    }

    /** Says how much of the run the sensor does not tell. */
    Optional<Phrase> gap() {
        return coverage.isWhole()
                ? Optional.empty()
                : Optional.of(Phrase.of("judged.sensor.gap", sensor, Digit.plain(coverage.unknown() / A_MINUTE)));
    }
}
