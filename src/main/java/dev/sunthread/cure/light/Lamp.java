package dev.sunthread.cure.light;

import org.jspecify.annotations.Nullable;

/**
 * What is known of the lamp of a run.
 *
 * @param band the band of its light, such as "365 nm"
 * @param hours how long it had burnt since it was new
 * @param before the last reading of a radiometer before the run
 * @param after the first one after it
 */
public record Lamp(
        @Nullable String band,
        @Nullable Double hours,
        @Nullable RadiometerReading before,
        @Nullable RadiometerReading after) {

    public static final Lamp UNKNOWN = new Lamp(null, null, null, null);
}
