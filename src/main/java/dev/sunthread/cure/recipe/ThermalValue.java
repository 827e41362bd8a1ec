package dev.sunthread.cure.recipe;

import dev.sunthread.cure.kinetics.DegreeOfCure;
import dev.sunthread.cure.kinetics.EquivalentTime;
import dev.sunthread.cure.kinetics.Kinetics;
import dev.sunthread.kernel.verdict.Digit;
import dev.sunthread.kernel.verdict.Limits;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Span;

/** One value of a temperature profile with the limits that a recipe gives it. */
public sealed interface ThermalValue {

    Limits limits();

    String unit();

    /** What it is, as a sentence begins. */
    Phrase named();

    /** Between which values it lies at one sensor in one cure. */
    Span of(TemperatureOfRun sensor);

    /** What it is before any cure. */
    default Span nothing() {
        return Span.exactly(0);
    }

    /** What it is after one more cure: it adds up. */
    default Span after(Span before, TemperatureOfRun sensor) {
        return before.plus(of(sensor));
    }

    /** What it is after a cure of which no temperature is known. */
    default Span unknown(Span before) {
        return new Span(before.low(), Double.POSITIVE_INFINITY);
    }

    /** Time within a window of temperatures, in minutes. */
    record Soak(Span window, Limits limits) implements ThermalValue {

        @Override
        public String unit() {
            return "min";
        }

        @Override
        public Phrase named() {
            return Phrase.of("judged.cure.time", window.said());
        }

        @Override
        public Span of(TemperatureOfRun sensor) {
            return sensor.minutesWithin(window);
        }
    }

    /** What does not add up: the highest of all cures stays. */
    sealed interface Highest extends ThermalValue {

        @Override
        default Span nothing() {
            return Span.exactly(Double.NEGATIVE_INFINITY);
        }

        @Override
        default Span after(Span before, TemperatureOfRun sensor) {
            return before.highest(of(sensor));
        }
    }

    /** The highest temperature, in degrees Celsius. */
    record Peak(Limits limits) implements Highest {

        @Override
        public String unit() {
            return "degC";
        }

        @Override
        public Phrase named() {
            return Phrase.of("judged.cure.peak");
        }

        @Override
        public Span of(TemperatureOfRun sensor) {
            return sensor.peak();
        }
    }

    /** The fastest heating, or cooling, over some seconds, in kelvin per minute. */
    record Ramp(boolean cooling, double over, Limits limits) implements Highest {

        @Override
        public String unit() {
            return "K/min";
        }

        @Override
        public Phrase named() {
            return Phrase.of(cooling ? "judged.cure.cooling" : "judged.cure.heating", Digit.plain(over));
        }

        @Override
        public Span of(TemperatureOfRun sensor) {
            return sensor.fastest(cooling ? -1 : 1, over);
        }
    }

    /** Equivalent time at a reference temperature, in minutes. */
    record Equivalent(EquivalentTime time, Limits limits) implements ThermalValue {

        @Override
        public String unit() {
            return "min";
        }

        @Override
        public Phrase named() {
            return Phrase.of("judged.cure.equivalent", Digit.plain(time.reference()));
        }

        @Override
        public Span of(TemperatureOfRun sensor) {
            return sensor.effect(time::seconds, time::seconds, Double.POSITIVE_INFINITY)
                    .times(1.0 / 60);
        }
    }

    /** Degree of cure from 0 to 1, with the degree it starts from. */
    record Degree(Kinetics kinetics, double start, Limits limits) implements ThermalValue {

        @Override
        public String unit() {
            return "";
        }

        @Override
        public Phrase named() {
            return Phrase.of("judged.cure.degree");
        }

        @Override
        public Span of(TemperatureOfRun sensor) {
            return after(nothing(), sensor);
        }

        @Override
        public Span nothing() {
            return Span.exactly(start);
        }

        @Override
        public Span after(Span before, TemperatureOfRun sensor) {
            return sensor.effect(
                    lines -> DegreeOfCure.after(kinetics, before.low(), lines),
                    lines -> DegreeOfCure.after(kinetics, before.high(), lines),
                    1);
        }

        @Override
        public Span unknown(Span before) {
            return new Span(before.low(), 1);
        }
    }
}
