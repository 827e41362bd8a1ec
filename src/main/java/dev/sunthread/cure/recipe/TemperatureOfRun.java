package dev.sunthread.cure.recipe;

import dev.sunthread.cure.profile.Coverage;
import dev.sunthread.cure.profile.Readings;
import dev.sunthread.cure.profile.Segment;
import dev.sunthread.cure.profile.SensorReadings;
import dev.sunthread.kernel.verdict.Digit;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Span;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * The temperature at one sensor through a run, with what is not known of it: the sensor's error, and gaps.
 *
 * @param run how long the run took, in seconds
 * @param longestGap up to what distance, in seconds, two readings tell what was between them
 */
record TemperatureOfRun(SensorReadings sensor, double run, double longestGap) {

    private static final double A_MINUTE = 60;

    private Coverage coverage(Readings readings) {
        return Coverage.of(readings, run, longestGap);
    }

    /** Minutes within a band: surely by every error, with no gap, to possibly by one, with all gaps. */
    Span minutesWithin(Span band) {
        Coverage coverage = coverage(sensor.readings());
        Span error = sensor.error();
        double low = band.low() + error.high();
        double high = band.high() + error.low();
        double surely = low <= high ? seconds(coverage, new Span(low, high)) : 0;
        double possibly = seconds(coverage, new Span(band.low() + error.low(), band.high() + error.high()));
        return new Span(surely / A_MINUTE, (possibly + coverage.unknown()) / A_MINUTE);
    }

    private static double seconds(Coverage coverage, Span band) {
        return coverage.told().stream()
                .mapToDouble(line -> line.secondsWithin(band))
                .sum();
    }

    /** The highest temperature; in a gap it may have been any. */
    Span peak() {
        double low = sensor.lowest().most();
        boolean whole = coverage(sensor.readings()).isWhole();
        return new Span(low, whole ? sensor.highest().most() : Double.POSITIVE_INFINITY);
    }

    /** The fastest change over some seconds, in kelvin per minute: upwards for 1, downwards for -1. */
    Span fastest(int direction, double over) {
        Readings readings = sensor.readings();
        boolean whole = coverage(readings).isWhole();
        double fastest = Ramps.fastest(readings.times(direction), over) * A_MINUTE;
        return new Span(fastest, whole ? fastest : Double.POSITIVE_INFINITY);
    }

    /**
     * What heat did: at least along the lowest temperatures with the gaps left out, at most along the highest with the
     * peak held through the gaps.
     */
    Span effect(ToDoubleFunction<List<Segment>> least, ToDoubleFunction<List<Segment>> most) {
        Coverage lowest = coverage(sensor.lowest());
        Coverage highest = coverage(sensor.highest());
        double peak = sensor.highest().most();
        Segment gaps = new Segment(0, peak, highest.unknown(), peak);
        return Span.between(
                least.applyAsDouble(lowest.told()),
                most.applyAsDouble(
                        lowest.isWhole()
                                ? highest.told()
                                : Stream.concat(Stream.of(gaps), highest.told().stream())
                                        .toList()));
    }

    /** Says how much of the run the sensor does not tell. */
    Optional<Phrase> gap() {
        double unknown = coverage(sensor.readings()).unknown();
        return unknown == 0
                ? Optional.empty()
                : Optional.of(Phrase.of("judged.sensor.gap", sensor.sensor(), Digit.plain(unknown / A_MINUTE)));
    }
}
