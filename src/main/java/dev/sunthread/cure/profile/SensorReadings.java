package dev.sunthread.cure.profile;

import dev.sunthread.kernel.verdict.Span;
import org.jspecify.annotations.Nullable;

/**
 * The readings of one sensor.
 *
 * @param position where in the load it sat, if known
 * @param error by how much it read above the truth, as far as that is known; nought if no error is known
 */
public record SensorReadings(String sensor, @Nullable String position, Readings readings, Span error) {

    public static SensorReadings of(String sensor, Readings readings) {
        return new SensorReadings(sensor, null, readings, Span.exactly(0));
    }

    /** The same readings with an error that was found afterwards. */
    public SensorReadings withError(Span found) {
        return new SensorReadings(sensor, position, readings, found);
    }
}
