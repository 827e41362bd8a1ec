package dev.sunthread.cure.recipe;

import dev.sunthread.cure.light.Lamp;
import dev.sunthread.cure.profile.Place;
import dev.sunthread.cure.profile.SensorReadings;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was measured of one run.
 *
 * @param seconds how long it took
 * @param temperatures in degrees Celsius
 * @param irradiances in mW/cm2
 * @param humidities in percent of relative humidity
 * @param lamp what is known of the lamp
 */
public record Measured(
        double seconds,
        List<SensorReadings> temperatures,
        List<SensorReadings> irradiances,
        List<SensorReadings> humidities,
        Lamp lamp) {

    /** The same run with those temperatures only that were measured nearest to a position. */
    public Measured near(@Nullable String position) {
        return new Measured(seconds, Place.nearest(temperatures, position), irradiances, humidities, lamp);
    }

    /** A run of which only temperatures were measured. */
    public static Measured ofTemperatures(double seconds, List<SensorReadings> temperatures) {
        return new Measured(seconds, temperatures, List.of(), List.of(), Lamp.UNKNOWN);
    }
}
