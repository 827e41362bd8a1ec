package dev.sunthread.testing;

import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Says through a plant what is cured and tested, and on what it lies meanwhile. */
public record Ovens(Plant plant) {

    /** Releases the recipe {@code CURE}, the specification {@code IV}, the oven {@code OVEN} and the rig {@code RIG}. */
    public static Ovens released(Plant plant) {
        plant.say("recipe", "1 00:00", Map.of("recipe", "CURE", "revision", "A", "name", "Cure"));
        plant.say("specification", "1 00:00", Map.of("specification", "IV", "revision", "A", "name", "Curve"));
        for (String code : List.of("OVEN", "RIG")) {
            plant.say(
                    "equipment",
                    "1 00:00",
                    Map.of("equipment", code, "revision", "A", "name", code, "station", "BOND"));
        }
        return new Ovens(plant);
    }

    /** Puts units, written {@code ITEM serial}, or carriers, written by their code, on a carrier. */
    public void load(String time, String carrier, String... things) {
        plant.say("carrier-load", time, Map.of("carrier", carrier, "loads", things(things), "station", "BOND"));
    }

    /** Takes them off again; everything if none is named. */
    public void unload(String time, String carrier, String... things) {
        plant.say("carrier-unload", time, Map.of("carrier", carrier, "unloads", things(things), "station", "BOND"));
    }

    /** A cure of units and carriers; times are hours and minutes of the day. */
    public void cure(String start, String end, String run, List<String> units, List<String> carriers) {
        plant.say(
                "cure-run",
                end,
                Map.of(
                        "run",
                        run,
                        "recipe",
                        "CURE",
                        "equipment",
                        "OVEN",
                        "startedAt",
                        written(start),
                        "units",
                        units.stream().map(Plant::unit).toList(),
                        "carriers",
                        carriers.stream()
                                .map(carrier -> Map.of("carrier", carrier))
                                .toList()));
    }

    public void test(String time, String run, String unit, String verdict) {
        plant.say(
                "test-run",
                time,
                Map.of(
                        "run",
                        run,
                        "unit",
                        Plant.unit(unit),
                        "specification",
                        "IV",
                        "equipment",
                        "RIG",
                        "startedAt",
                        written(time),
                        "verdict",
                        verdict));
    }

    public void verify(String time, String equipment, String verdict) {
        plant.say(
                "verification",
                time,
                Map.of(
                        "equipment",
                        equipment,
                        "specification",
                        "IV",
                        "verdict",
                        verdict,
                        "evidence",
                        "reference unit"));
    }

    private static String written(String time) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(Plant.at(time));
    }

    private static List<Map<String, Object>> things(String... things) {
        return Arrays.stream(things)
                .map(thing -> thing.contains(" ")
                        ? Map.<String, Object>of("unit", Plant.unit(thing))
                        : Map.<String, Object>of("carrier", thing))
                .toList();
    }
}
