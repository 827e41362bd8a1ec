package dev.sunthread.cure.recipe;

import dev.sunthread.cure.profile.RecordingRule;
import dev.sunthread.kernel.verdict.Criterion;
import dev.sunthread.kernel.verdict.Judgement;
import dev.sunthread.kernel.verdict.Phrase;
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
    public Judgement judge(List<Measured> cures) {
        if (cures.stream().allMatch(run -> run.temperatures().isEmpty())) {
            return Judgement.notProven(Phrase.of("judged.no-temperature"));
        }
        List<Criterion> criteria = new ArrayList<>();
        cures.forEach(run -> run.temperatures()
                .forEach(sensor -> recording.jumps(sensor, run.seconds()).ifPresent(criteria::add)));
        values.forEach(value -> criteria.addAll(rule.judge(value, cures, recording)));
        return Judgement.of(criteria, cures.stream().flatMap(this::gaps).toList());
    }

    private Stream<Phrase> gaps(Measured run) {
        return run.temperatures().stream()
                .map(sensor -> TemperatureOfRun.of(sensor, run.seconds(), recording.longestGap()))
                .flatMap(sensor -> sensor.gap().stream());
    }
}
