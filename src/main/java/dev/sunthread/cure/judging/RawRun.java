package dev.sunthread.cure.judging;

import dev.sunthread.catalog.FoundError;
import dev.sunthread.cure.light.Lamp;
import dev.sunthread.cure.profile.Readings;
import dev.sunthread.cure.profile.SensorReadings;
import dev.sunthread.cure.recipe.Measured;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Span;
import dev.sunthread.kernel.verdict.Unusable;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/**
 * The raw data of a cure run.
 *
 * @param seconds how long it took
 */
public record RawRun(long entry, double seconds, List<RawSeries> series, Lamp lamp) {

    /** What one sensor read, in the unit it was told in. */
    public record RawSeries(
            String sensor,
            @Nullable String position,
            FoundError.Quantity quantity,
            String unitOfMeasure,
            double[] seconds,
            double[] values) {}

    boolean lampIsUnknown() {
        return lamp.equals(Lamp.UNKNOWN);
    }

    /** The readings in the units of computation, with the errors that were found. @throws Unusable if they are unusable */
    public Measured measured(List<FoundError> errors) {
        return new Measured(
                seconds,
                readings(FoundError.Quantity.TEMPERATURE, errors),
                readings(FoundError.Quantity.IRRADIANCE, errors),
                readings(FoundError.Quantity.HUMIDITY, errors),
                lamp);
    }

    private List<SensorReadings> readings(FoundError.Quantity quantity, List<FoundError> errors) {
        return series.stream()
                .filter(one -> one.quantity() == quantity)
                .map(one -> new SensorReadings(one.sensor(), one.position(), converted(one), error(one, errors)))
                .toList();
    }

    private static Readings converted(RawSeries series) {
        Readings told = Readings.of(series.seconds(), series.values());
        return switch (series.unitOfMeasure()) {
            case "degC", "mW/cm2", "%RH", "%" -> told;
            case "K" -> told.plus(-273.15);
            case "W/m2" -> told.times(0.1);
            default ->
                throw new Unusable(
                        Phrase.of("judged.sensor.unit", series.sensor(), series.unitOfMeasure()),
                        Phrase.of("judged.sensor.unit.remedy"));
        };
    }

    private static Span error(RawSeries series, List<FoundError> errors) {
        return errors.stream()
                .filter(error -> error.quantity() == series.quantity())
                .filter(error -> error.sensor() == null || Objects.equals(error.sensor(), series.sensor()))
                .map(FoundError::span)
                .reduce(Span.exactly(0), Span::plus);
    }
}
