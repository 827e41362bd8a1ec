package dev.sunthread.cure.profile;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * A position in equipment as people number it, such as {@code S3} or {@code R2C4}: letters around numbers. Positions that
 * have the same letters lie as far apart as their numbers say.
 */
public record Place(String letters, List<Double> numbers) {

    private static final Pattern NUMBER = Pattern.compile("\\d+");

    /** A position as it is written. */
    public static Place of(String position) {
        Matcher numbers = NUMBER.matcher(position);
        return new Place(
                numbers.replaceAll("#"),
                NUMBER.matcher(position)
                        .results()
                        .map(found -> Double.valueOf(found.group()))
                        .toList());
    }

    /** How far away another position is, in steps of the numbering; nothing if that can't be told. */
    OptionalDouble distance(Place other) {
        return letters.equals(other.letters)
                ? OptionalDouble.of(Math.sqrt(IntStream.range(0, numbers.size())
                        .mapToDouble(i -> Math.pow(numbers.get(i) - other.numbers.get(i), 2))
                        .sum()))
                : OptionalDouble.empty();
    }

    /** The sensors nearest to a position; all of them if no position is known, or none of theirs is numbered like it. */
    public static List<SensorReadings> nearest(List<SensorReadings> sensors, @Nullable String position) {
        if (position == null) {
            return sensors;
        }
        Place wanted = of(position);
        OptionalDouble least = sensors.stream()
                .flatMapToDouble(sensor -> distance(sensor, wanted).stream())
                .min();
        return least.isEmpty()
                ? sensors
                : sensors.stream()
                        .filter(sensor -> Objects.equals(distance(sensor, wanted), least))
                        .toList();
    }

    private static OptionalDouble distance(SensorReadings sensor, Place wanted) {
        return Optional.ofNullable(sensor.position())
                .map(position -> of(position).distance(wanted))
                .orElse(OptionalDouble.empty());
    }
}
