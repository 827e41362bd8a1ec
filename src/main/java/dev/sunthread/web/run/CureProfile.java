package dev.sunthread.web.run;

import dev.sunthread.catalog.FoundError;
import dev.sunthread.cure.judging.RawRun;
import dev.sunthread.kernel.verdict.Digit;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.web.chart.Chart;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The raw profile of a run: charts, one for each quantity, with the table beside them.
 *
 * @param sampled some of the readings of each sensor, evenly apart
 * @param readings every reading, for the file
 */
public record CureProfile(List<Chart> charts, List<Sensor> sensors, List<Sampled> sampled, List<Reading> readings) {

    private static final int SAMPLES = 20;

    /** A sensor with what it read at least and at most. */
    public record Sensor(
            String sensor,
            @Nullable String position,
            Phrase quantity,
            String unit,
            int readings,
            String least,
            String most,
            String last) {}

    /** A reading as people read it, in minutes after the run began. */
    public record Sampled(String sensor, String minute, String value, String unit) {}

    /** One reading of a sensor, in seconds after the run began. */
    public record Reading(String sensor, double second, double value, String unit) {}

    /** At most some twenty readings, the first and the last among them. */
    static Stream<Sampled> sampled(RawRun.RawSeries series) {
        int last = series.values().length - 1;
        int apart = Math.max(1, (last + SAMPLES - 1) / SAMPLES);
        return IntStream.rangeClosed(0, last)
                .filter(i -> i % apart == 0 || i == last)
                .mapToObj(i -> new Sampled(
                        series.sensor(),
                        Digit.plain(series.seconds()[i] / 60),
                        Digit.plain(series.values()[i]),
                        series.unitOfMeasure()));
    }

    /** What is measured, in words. */
    static Phrase measured(FoundError.Quantity quantity) {
        return switch (quantity) {
            case TEMPERATURE -> Phrase.of("judging.reads.temperature");
            case IRRADIANCE -> Phrase.of("judging.reads.irradiance");
            case HUMIDITY -> Phrase.of("judging.reads.humidity");
            case CURRENT -> Phrase.of("judging.reads.current");
            case VOLTAGE -> Phrase.of("judging.reads.voltage");
        };
    }

    static Sensor sensor(RawRun.RawSeries series) {
        double[] values = series.values();
        return new Sensor(
                series.sensor(),
                series.position(),
                measured(series.quantity()),
                series.unitOfMeasure(),
                values.length,
                Digit.plain(Arrays.stream(values).min().orElse(0)),
                Digit.plain(Arrays.stream(values).max().orElse(0)),
                Digit.plain(values[values.length - 1]));
    }
}
