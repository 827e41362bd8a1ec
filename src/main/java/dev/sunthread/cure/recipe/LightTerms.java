package dev.sunthread.cure.recipe;

import dev.sunthread.cure.light.Dose;
import dev.sunthread.cure.light.Lamp;
import dev.sunthread.cure.light.RadiometerReading;
import dev.sunthread.cure.profile.Coverage;
import dev.sunthread.cure.profile.RecordingRule;
import dev.sunthread.cure.profile.SensorReadings;
import dev.sunthread.kernel.verdict.Criterion;
import dev.sunthread.kernel.verdict.Judgement;
import dev.sunthread.kernel.verdict.Limits;
import dev.sunthread.kernel.verdict.Outcome;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A cure by ultraviolet light. A dose alone says too little, so irradiance, band and the age of the lamp are judged too.
 *
 * @param dose in mJ/cm2
 * @param irradiance in mW/cm2; absent if any will do
 * @param band the band of light it is stated for; absent if any will do
 * @param lampHours for how long a lamp may be used; absent if for any time
 * @param radiometerHours within how many hours before and after a run a radiometer must have been read; absent if the
 *     sensor of the run is enough
 */
public record LightTerms(
        Limits dose,
        @Nullable Limits irradiance,
        @Nullable String band,
        @Nullable Double lampHours,
        @Nullable Double radiometerHours,
        RecordingRule recording)
        implements Terms {

    private static final Phrase DOSE = Phrase.of("judged.light.dose");
    private static final Phrase IRRADIANCE = Phrase.of("judged.light.irradiance");
    private static final Phrase NONE = Phrase.of("judged.none-recorded");

    @Override
    public Judgement judge(List<Measured> cures) {
        List<Criterion> criteria = new ArrayList<>();
        criteria.add(ofDose(cures));
        cures.forEach(run -> criteria.addAll(besideTheDose(run)));
        return Judgement.of(criteria, List.of());
    }

    private List<Criterion> besideTheDose(Measured run) {
        List<Criterion> criteria = new ArrayList<>();
        run.irradiances()
                .forEach(sensor -> recording.jumps(sensor, run.seconds()).ifPresent(criteria::add));
        if (irradiance != null) {
            criteria.add(ofIrradiance(run, irradiance));
        }
        if (band != null) {
            criteria.add(ofBand(band, run.lamp().band()));
        }
        if (lampHours != null) {
            criteria.add(
                    known(Phrase.of("judged.light.lamp-hours"), run.lamp().hours(), "h", Limits.atMost(lampHours)));
        }
        if (radiometerHours != null) {
            criteria.add(
                    reading(Phrase.of("judged.light.reading-before"), run.lamp().before(), radiometerHours));
            criteria.add(
                    reading(Phrase.of("judged.light.reading-after"), run.lamp().after(), radiometerHours));
        }
        return criteria;
    }

    /** Doses add; of a cure without a record nothing is known. */
    private Criterion ofDose(List<Measured> cures) {
        if (cures.stream().allMatch(run -> dose(run).isEmpty())) {
            return Criterion.missing(DOSE, "mJ/cm2", dose, Phrase.of("judged.light.no-irradiance"));
        }
        Phrase name = cures.size() == 1 ? DOSE : Phrase.of("judged.of-cures", DOSE, String.valueOf(cures.size()));
        Span sum = Dose.sum(cures.stream()
                .map(run -> dose(run).orElse(new Span(0, Double.POSITIVE_INFINITY)))
                .toList());
        return Criterion.of(name, sum, "mJ/cm2", dose);
    }

    /** By the weakest sensor; without one, between the radiometer's readings before and after. */
    private Optional<Span> dose(Measured run) {
        Lamp lamp = run.lamp();
        Optional<Span> sensed = run.irradiances().stream()
                .map(sensor -> Dose.along(sensor, run.seconds(), recording.longestGap()))
                .reduce(Span::lowest);
        return sensed.isPresent() || lamp.before() == null || lamp.after() == null
                ? sensed
                : Optional.of(Dose.between(lamp.before(), lamp.after(), run.seconds()));
    }

    private Criterion ofIrradiance(Measured run, Limits limits) {
        Lamp lamp = run.lamp();
        Optional<Span> sensed = run.irradiances().stream()
                .map(sensor -> strongest(sensor, run.seconds()))
                .reduce(Span::hull);
        if (sensed.isEmpty() && lamp.before() != null && lamp.after() != null) {
            sensed = Optional.of(
                    Span.between(lamp.before().irradiance(), lamp.after().irradiance()));
        }
        return sensed.map(known -> Criterion.of(IRRADIANCE, known, "mW/cm2", limits))
                .orElseGet(() -> Criterion.missing(IRRADIANCE, "mW/cm2", limits, NONE));
    }

    /** In a gap it may have been any. */
    private Span strongest(SensorReadings sensor, double run) {
        Coverage coverage = Coverage.of(sensor.readings(), run, recording.longestGap());
        double most = coverage.most().orElse(Double.NEGATIVE_INFINITY);
        boolean whole = coverage.isWhole() && coverage.most().isPresent();
        return new Span(
                most - sensor.error().high(), whole ? most - sensor.error().low() : Double.POSITIVE_INFINITY);
    }

    private static Criterion ofBand(String wanted, @Nullable String told) {
        Limits any = new Limits(null, null, 0);
        Phrase band = Phrase.of("judged.light.band");
        if (told == null) {
            return Criterion.missing(band, "", any, Phrase.of("judged.light.no-band", wanted));
        }
        boolean same = told.equals(wanted);
        Phrase sentence =
                same ? Phrase.of("judged.light.band-kept", told) : Phrase.of("judged.light.band-other", told, wanted);
        return new Criterion(band, null, "", any, same ? Outcome.PASSED : Outcome.FAILED, sentence);
    }

    private static Criterion reading(Phrase when, @Nullable RadiometerReading reading, double hours) {
        return known(when, reading == null ? null : reading.hoursAway(), "h", Limits.atMost(hours));
    }

    private static Criterion known(Phrase name, @Nullable Double value, String unit, Limits limits) {
        return value == null
                ? Criterion.missing(name, unit, limits, NONE)
                : Criterion.of(name, Span.exactly(value), unit, limits);
    }
}
