package dev.sunthread.cure.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.sunthread.cure.kinetics.Arrhenius;
import dev.sunthread.cure.kinetics.Autocatalytic;
import dev.sunthread.cure.kinetics.Diffusion;
import dev.sunthread.cure.kinetics.EquivalentTime;
import dev.sunthread.cure.light.Dose;
import dev.sunthread.cure.profile.Readings;
import dev.sunthread.cure.profile.SensorReadings;
import dev.sunthread.kernel.verdict.Limits;
import dev.sunthread.kernel.verdict.Span;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.assertj.core.data.Offset;

/** A line read more often is the same line: nothing that is computed along it may change. */
class ResamplingTests {

    private static final List<ThermalValue> VALUES = List.of(
            new ThermalValue.Soak(new Span(100, 150), Limits.atLeast(0)),
            new ThermalValue.Peak(Limits.atLeast(0)),
            new ThermalValue.Ramp(false, 90, Limits.atLeast(0)),
            new ThermalValue.Ramp(true, 90, Limits.atLeast(0)),
            new ThermalValue.Equivalent(new EquivalentTime(94_900, 150), Limits.atLeast(0)),
            new ThermalValue.Degree(
                    new Autocatalytic(
                            new Arrhenius(0, 0),
                            new Arrhenius(7.0e4, 65_000),
                            0.5,
                            1.5,
                            new Diffusion(30, -1.5148, 5.171e-3)),
                    0.01,
                    Limits.atLeast(0)));

    @Property(tries = 60)
    void readingALineMoreOftenChangesNothing(@ForAll("profiles") Readings profile) {
        TemperatureOfRun once = run(profile);
        TemperatureOfRun oftener = run(oftener(profile));
        for (ThermalValue value : VALUES) {
            assertThat(value.of(oftener).low())
                    .isCloseTo(value.of(once).low(), close(value.of(once).low()));
        }
        Span dose = Dose.along(SensorReadings.of("R", profile), profile.end(), 1e9);
        assertThat(Dose.along(SensorReadings.of("R", oftener(profile)), profile.end(), 1e9)
                        .low())
                .isCloseTo(dose.low(), close(dose.low()));
    }

    /** What a sensor adds to the dose is never negative, so a longer run has no smaller dose. */
    @Property
    void doseOnlyGrows(@ForAll("profiles") Readings profile) {
        double sum = 0;
        for (int last = 2; last <= profile.size(); last++) {
            Readings part = Readings.of(
                    DoubleStream.iterate(0, i -> i + 1)
                            .limit(last)
                            .map(i -> profile.second((int) i))
                            .toArray(),
                    DoubleStream.iterate(0, i -> i + 1)
                            .limit(last)
                            .map(i -> profile.value((int) i))
                            .toArray());
            double dose =
                    Dose.along(SensorReadings.of("R", part), part.end(), 1e9).low();
            assertThat(dose).isGreaterThanOrEqualTo(sum);
            sum = dose;
        }
    }

    @Provide
    Arbitrary<Readings> profiles() {
        return Arbitraries.integers()
                .between(20, 190)
                .list()
                .ofMinSize(3)
                .ofMaxSize(12)
                .map(ResamplingTests::profile);
    }

    private static Readings profile(List<Integer> celsius) {
        double[] seconds = new double[celsius.size()];
        for (int i = 1; i < seconds.length; i++) {
            seconds[i] = seconds[i - 1] + 40 + 7 * (celsius.get(i) % 40);
        }
        return Readings.of(seconds, celsius.stream().mapToDouble(t -> t).toArray());
    }

    /** Two more readings on every line. */
    private static Readings oftener(Readings profile) {
        double[] seconds = DoubleStream.concat(
                        DoubleStream.of(profile.start()),
                        profile.segments().stream()
                                .flatMapToDouble(line -> DoubleStream.of(
                                        line.start() + 0.31 * line.seconds(),
                                        line.start() + 0.77 * line.seconds(),
                                        line.end())))
                .toArray();
        return Readings.of(seconds, Arrays.stream(seconds).map(profile::at).toArray());
    }

    private static TemperatureOfRun run(Readings readings) {
        return TemperatureOfRun.of(SensorReadings.of("T", readings), readings.end(), 1e9);
    }

    private static Offset<Double> close(double value) {
        return within(1e-7 * (1 + Math.abs(value)));
    }
}
