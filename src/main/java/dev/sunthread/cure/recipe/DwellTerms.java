package dev.sunthread.cure.recipe;

import dev.sunthread.cure.profile.RecordingRule;
import dev.sunthread.cure.profile.SensorReadings;
import dev.sunthread.kernel.verdict.Criterion;
import dev.sunthread.kernel.verdict.Judgement;
import dev.sunthread.kernel.verdict.Limits;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * A dwell in a climate: silicone that takes up moisture over all of it, or epoxy at room temperature. Only time with the
 * climate inside its limits counts.
 *
 * @param hours how long
 * @param temperature from what to what, in degrees Celsius
 * @param humidity from what to what, in percent; absent for materials that need no moisture
 */
public record DwellTerms(
        Limits hours, Span temperature, @Nullable Span humidity, RecordingRule recording) implements Terms {

    private static final double AN_HOUR = 3600;

    @Override
    public Judgement judge(List<Measured> cures) {
        List<Criterion> criteria = new ArrayList<>();
        cures.forEach(run -> Stream.concat(run.temperatures().stream(), run.humidities().stream())
                .forEach(sensor -> recording.jumps(sensor, run.seconds()).ifPresent(criteria::add)));
        List<Measured> unknown =
                cures.stream().filter(run -> seconds(run).isEmpty()).toList();
        criteria.add(
                unknown.size() == cures.size()
                        ? Criterion.missing(name(), "h", hours, missing(unknown.get(0)))
                        : Criterion.of(name(), total(cures).times(1 / AN_HOUR), "h", hours));
        return Judgement.of(criteria, List.of());
    }

    /** A dwell without a record may have been of any use. */
    private Span total(List<Measured> cures) {
        return cures.stream()
                .map(run -> seconds(run).orElse(new Span(0, run.seconds())))
                .reduce(Span.exactly(0), Span::plus);
    }

    private Phrase name() {
        return humidity == null
                ? Phrase.of("judged.dwell", temperature.said())
                : Phrase.of("judged.dwell.moist", temperature.said(), humidity.said());
    }

    private static Phrase missing(Measured run) {
        return run.temperatures().isEmpty()
                ? Phrase.of("judged.dwell.no-temperature")
                : Phrase.of("judged.dwell.no-humidity");
    }

    /** By the worst sensor of each quantity. */
    private Optional<Span> seconds(Measured run) {
        if (run.temperatures().isEmpty() || humidity != null && run.humidities().isEmpty()) {
            return Optional.empty();
        }
        return run.temperatures().stream().map(sensor -> seconds(sensor, run)).reduce(Span::lowest);
    }

    private Span seconds(SensorReadings sensor, Measured run) {
        Climate.Band warm = new Climate.Band(sensor, temperature);
        double gap = recording.longestGap();
        return humidity == null
                ? Climate.seconds(List.of(warm), run.seconds(), gap)
                : run.humidities().stream()
                        .map(moist ->
                                Climate.seconds(List.of(warm, new Climate.Band(moist, humidity)), run.seconds(), gap))
                        .reduce(Span::lowest)
                        .orElseThrow();
    }
}
