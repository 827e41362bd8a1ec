package dev.sunthread.cure.recipe;

import dev.sunthread.cure.profile.Means;
import dev.sunthread.cure.profile.RecordingRule;
import dev.sunthread.cure.profile.SensorReadings;
import dev.sunthread.kernel.verdict.Criterion;
import dev.sunthread.kernel.verdict.Judgement;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A cure by heat: what each wanted value of a temperature profile must be.
 *
 * @param rule which sensor counts
 * @param values what must hold, each with its limits
 */
public record ThermalTerms(SensorRule rule, List<ThermalValue> values, RecordingRule recording) implements Terms {

    @Override
    public Judgement judge(Measured run) {
        if (run.temperatures().isEmpty()) {
            return Judgement.notProven(Phrase.of("judged.no-temperature"));
        }
        List<Criterion> criteria = new ArrayList<>();
        run.temperatures().forEach(sensor -> recording.jumps(sensor).ifPresent(criteria::add));
        values.forEach(value -> criteria.addAll(rule.judge(value, run, recording)));
        return Judgement.of(criteria, gaps(run));
    }

    private List<Phrase> gaps(Measured run) {
        return run.temperatures().stream()
                .map(sensor -> new TemperatureOfRun(sensor, run.seconds(), recording.longestGap()))
                .flatMap(sensor -> sensor.gap().stream())
                .toList();
    }

    @Override
    public Effect effect(Measured run) {
        if (run.temperatures().isEmpty()) {
            return new Effect(
                    unknown(),
                    unknown(),
                    Span.exactly(0),
                    new Span(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY));
        }
        return new Effect(
                least(run, ThermalValue.Soak.class),
                least(run, ThermalValue.Equivalent.class),
                Span.exactly(0),
                peak(run));
    }

    private Span least(Measured run, Class<? extends ThermalValue> kind) {
        return values.stream()
                .filter(kind::isInstance)
                .flatMap(value -> sensors(run).map(value::of))
                .reduce((one, other) -> one.low() <= other.low() ? one : other)
                .orElse(Span.exactly(0));
    }

    private Span peak(Measured run) {
        return sensors(run)
                .map(TemperatureOfRun::peak)
                .reduce((one, other) -> one.high() >= other.high() ? one : other)
                .orElseThrow();
    }

    private Stream<TemperatureOfRun> sensors(Measured run) {
        Stream<SensorReadings> counted =
                rule == SensorRule.MEAN ? Stream.of(Means.of(run.temperatures())) : run.temperatures().stream();
        return counted.map(sensor -> new TemperatureOfRun(sensor, run.seconds(), recording.longestGap()));
    }

    private static Span unknown() {
        return new Span(0, Double.POSITIVE_INFINITY);
    }
}
