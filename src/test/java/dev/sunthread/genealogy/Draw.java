package dev.sunthread.genealogy;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Draws the things and moments of a small random plant: two stations with two positions each, four lots of two items, a
 * lot of parts, and six units on three levels. Every moment is one of a few, so that ties and near ties are frequent.
 */
final class Draw {

    static final List<String> STATIONS = List.of("S1", "S2");
    static final List<String> POSITIONS = List.of("V1", "V2");
    static final List<String> LOTS = List.of("A1", "A2", "P1", "P2");
    static final List<String> UNITS = List.of("r1", "r2", "r3", "w1", "w2", "m1");
    static final String PARTS = "C1";

    private static final List<String> LEVELS = List.of("RCV", "WALL", "MOD");
    private static final OffsetDateTime BEGIN = OffsetDateTime.parse("2026-03-10T08:00:00+01:00");

    private final Random random;
    private final String plant;

    Draw(Random random, String plant) {
        this.random = random;
        this.plant = plant;
    }

    OffsetDateTime moment() {
        OffsetDateTime moment = BEGIN.plusSeconds(30L * random.nextInt(40));
        return chance(6) ? moment.plusNanos(1000) : moment;
    }

    String notLongBefore(OffsetDateTime moment) {
        return written(moment.minusSeconds(30L * random.nextInt(3)));
    }

    boolean chance(int oneIn) {
        return random.nextInt(oneIn) == 0;
    }

    <T> T any(List<T> things) {
        return things.get(random.nextInt(things.size()));
    }

    int anyOf(int count) {
        return random.nextInt(count);
    }

    List<Map<String, Object>> units(int most) {
        return Stream.generate(() -> unit(any(UNITS))).limit(most).distinct().toList();
    }

    Map<String, Object> unit(String serial) {
        int level = serial.startsWith("r") ? 0 : serial.startsWith("w") ? 1 : 2;
        return Map.of("item", LEVELS.get(level), "serial", named(serial));
    }

    String named(String name) {
        return plant + "-" + name;
    }

    static String written(OffsetDateTime at) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(at);
    }
}
