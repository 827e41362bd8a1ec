package dev.sunthread.cure.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.cure.kinetics.Arrhenius;
import dev.sunthread.cure.kinetics.Autocatalytic;
import dev.sunthread.cure.kinetics.Diffusion;
import dev.sunthread.cure.kinetics.EquivalentTime;
import dev.sunthread.cure.kinetics.NthOrder;
import dev.sunthread.cure.light.Dose;
import dev.sunthread.cure.light.Lamp;
import dev.sunthread.cure.profile.RecordingRule;
import dev.sunthread.cure.profile.SensorReadings;
import dev.sunthread.kernel.verdict.Limits;
import dev.sunthread.kernel.verdict.Span;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever is computed of readings with gaps and drifted sensors, the true value of the whole course lies within it. */
class TruthInCureSpansTests {

    private static final int COURSES = Integer.getInteger("sunthread.truths", 1_000);
    private static final long SEED = Long.getLong("sunthread.seed", 1);
    private static final double LONGEST_GAP = 180;
    private static final double NO_GAP = 1e12;
    private static final Limits ANY = Limits.between(-1e300, 1e300);
    private static final RecordingRule RECORDING = new RecordingRule(LONGEST_GAP, 1e9);
    private static final RecordingRule KNOWN = new RecordingRule(NO_GAP, 1e9);

    static Stream<ThermalValue> values() {
        return Stream.of(
                new ThermalValue.Soak(new Span(100, 150), ANY),
                new ThermalValue.Peak(ANY),
                new ThermalValue.Ramp(false, 300, ANY),
                new ThermalValue.Ramp(true, 90, ANY),
                new ThermalValue.Equivalent(new EquivalentTime(94_900, 150), ANY),
                new ThermalValue.Degree(new NthOrder(new Arrhenius(2e5, 62_000), 1.4), 0, ANY),
                new ThermalValue.Degree(
                        new Autocatalytic(
                                new Arrhenius(0, 0),
                                new Arrhenius(7.0e4, 65_000),
                                0.5,
                                1.5,
                                new Diffusion(30, -1.5148, 5.171e-3)),
                        0.01,
                        ANY));
    }

    @ParameterizedTest
    @MethodSource("values")
    void ofTemperatures(ThermalValue value) {
        Random random = new Random(SEED);
        for (int i = 0; i < COURSES; i++) {
            double run = 600 + random.nextDouble() * 6_000;
            List<TrueProfile> sensors = profiles(random, run, 20, 190);
            SensorRule rule = SensorRule.values()[random.nextInt(SensorRule.values().length)];
            List<Span> told = spans(rule, value, told(sensors), run, RECORDING);
            List<Span> truth = spans(rule, value, known(sensors), run, KNOWN);
            for (int side = 0; side < truth.size(); side++) {
                contains(told.get(side), truth.get(side), i);
            }
        }
    }

    @Test
    void ofDoses() {
        Random random = new Random(SEED);
        for (int i = 0; i < COURSES; i++) {
            double run = 100 + random.nextDouble() * 2_000;
            TrueProfile light = TrueProfile.of(random, run, LONGEST_GAP, 0, 250);
            contains(Dose.along(light.told(), run, LONGEST_GAP), Dose.along(light.known(), run, NO_GAP), i);
        }
    }

    @ParameterizedTest
    @EnumSource
    void ofDwells(Moist moist) {
        Random random = new Random(SEED);
        for (int i = 0; i < COURSES; i++) {
            double run = 600 + random.nextDouble() * 6_000;
            List<TrueProfile> warm = profiles(random, run, 15, 30);
            List<TrueProfile> wet = moist == Moist.YES ? profiles(random, run, 20, 80) : List.of();
            contains(
                    dwell(told(warm), told(wet), run, moist, RECORDING),
                    dwell(known(warm), known(wet), run, moist, KNOWN),
                    i);
        }
    }

    enum Moist {
        YES,
        NO
    }

    private static Span dwell(
            List<SensorReadings> warm, List<SensorReadings> wet, double run, Moist moist, RecordingRule recording) {
        Span humidity = moist == Moist.YES ? new Span(35, 70) : null;
        return Objects.requireNonNull(new DwellTerms(ANY, new Span(18, 26), humidity, recording)
                .judge(new Measured(run, warm, List.of(), wet, Lamp.UNKNOWN))
                .criteria()
                .get(0)
                .value());
    }

    private static List<Span> spans(
            SensorRule rule, ThermalValue value, List<SensorReadings> sensors, double run, RecordingRule recording) {
        return rule.judge(value, List.of(Measured.ofTemperatures(run, sensors)), recording).stream()
                .map(criterion -> Objects.requireNonNull(criterion.value()))
                .toList();
    }

    private static List<TrueProfile> profiles(Random random, double run, double least, double most) {
        return Stream.generate(() -> TrueProfile.of(random, run, LONGEST_GAP, least, most))
                .limit(1 + random.nextInt(3))
                .toList();
    }

    private static List<SensorReadings> told(List<TrueProfile> profiles) {
        return profiles.stream().map(TrueProfile::told).toList();
    }

    private static List<SensorReadings> known(List<TrueProfile> profiles) {
        return profiles.stream().map(TrueProfile::known).toList();
    }

    private static void contains(Span told, Span truth, int course) {
        double rounded = 1e-7 * (1 + Math.abs(truth.low()));
        assertThat(truth.high()).as("truth of course %d", course).isLessThanOrEqualTo(truth.low() + rounded);
        assertThat(told.low() <= truth.low() + rounded && told.high() >= truth.high() - rounded)
                .as("course %d of seed %d: %s lies within %s", course, SEED, truth, told)
                .isTrue();
    }
}
