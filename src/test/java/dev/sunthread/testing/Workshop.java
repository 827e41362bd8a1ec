package dev.sunthread.testing;

import dev.sunthread.kernel.UnitId;
import dev.sunthread.ledger.Acceptance;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Manner;
import dev.sunthread.ledger.RaisedFinding;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A {@link Plant} with an oven {@code OVEN}, a rig {@code RIG}, recipe {@code BAKE} and specification {@code PULL},
 * receivers {@code R1} to {@code R4} and a wall {@code W1} born at 08:00. Units are written {@code ITEM serial}.
 */
public final class Workshop {

    private final Plant plant;

    private Workshop(Plant plant) {
        this.plant = plant;
    }

    /** A workshop with its definitions released and its units born. */
    public static Workshop released(Door door) {
        Workshop workshop = new Workshop(Plant.released(door));
        workshop.define("recipe", "BAKE");
        workshop.define("specification", "PULL");
        workshop.define("equipment", "OVEN");
        workshop.define("equipment", "RIG");
        workshop.plant.birth("08:00", "RCV", "R1", "R2", "R3", "R4");
        workshop.plant.birth("08:00", "WALL", "W1");
        return workshop;
    }

    public Plant plant() {
        return plant;
    }

    /** Releases the first revision of what has a code and a name. */
    public Acceptance define(String kind, String code) {
        return plant.say(kind, "1 00:00", Map.of(kind, code, "revision", "A", "name", code));
    }

    /** A route of receivers: bond, done at 08:30 and demanding {@code BAKE} and {@code PULL}, then coat. */
    public Acceptance demandingRoute() {
        Map<String, Object> bond =
                Map.of("operation", "bond", "name", "Bond", "cures", List.of("BAKE"), "tests", List.of("PULL"));
        Map<String, Object> coat = Map.of("operation", "coat", "name", "Coat");
        plant.say("route", "1 00:00", Map.of("item", "RCV", "revision", "A", "operations", List.of(bond, coat)));
        return step("08:30", "bond", "RCV R1", "RCV R2", "RCV R3", "RCV R4");
    }

    public Acceptance load(String time, String carrier, String... units) {
        return plant.say(
                "carrier-load",
                time,
                Map.of(
                        "carrier",
                        carrier,
                        "loads",
                        Arrays.stream(units).map(u -> Map.of("unit", unit(u))).toList()));
    }

    public Acceptance loadAt(String time, String carrier, String position, String unit) {
        return plant.say(
                "carrier-load",
                time,
                Map.of("carrier", carrier, "loads", List.of(Map.of("unit", unit(unit), "position", position))));
    }

    /** Puts a carrier on another. */
    public Acceptance stack(String time, String outer, String inner) {
        return plant.say("carrier-load", time, Map.of("carrier", outer, "loads", List.of(Map.of("carrier", inner))));
    }

    /** Takes units off a carrier, or everything if none is named. */
    public Acceptance unload(String time, String carrier, String... units) {
        return plant.say(
                "carrier-unload",
                time,
                Map.of(
                        "carrier",
                        carrier,
                        "unloads",
                        Arrays.stream(units).map(u -> Map.of("unit", unit(u))).toList()));
    }

    /** Bakes units in the oven for half an hour that ends at a full hour, such as {@code 10}. */
    public Acceptance bake(String hour, String run, String... units) {
        return cure(hour, run, "units", Arrays.stream(units).map(Workshop::unit).toList());
    }

    public Acceptance bakeCarrier(String hour, String run, String carrier) {
        return cure(hour, run, "carriers", List.of(Map.of("carrier", carrier)));
    }

    private Acceptance cure(String hour, String run, String what, List<?> members) {
        Map<String, Object> body = new TreeMap<>(Map.of("run", run, "recipe", "BAKE", "equipment", "OVEN"));
        body.put("startedAt", Plant.at(hour + ":00").minusMinutes(30).toString().replace("+01:00", ":00+01:00"));
        body.put(what, members);
        return plant.say("cure-run", hour + ":00", body);
    }

    /** Pulls a unit on the rig. */
    public Acceptance pull(String time, String run, String unit, String verdict) {
        return plant.say("test-run", time, pulled(run, unit, verdict));
    }

    public static Map<String, Object> pulled(String run, String unit, String verdict) {
        return Map.of("run", run, "unit", unit(unit), "specification", "PULL", "equipment", "RIG", "verdict", verdict);
    }

    public Acceptance check(String way, String time, String equipment, String verdict) {
        return plant.say(way, time, Map.of("equipment", equipment, "verdict", verdict, "evidence", "as written"));
    }

    public Acceptance step(String time, String operation, String... units) {
        return plant.say("step", time, stepped(operation, units));
    }

    public static Map<String, Object> stepped(String operation, String... units) {
        return Map.of(
                "operation",
                operation,
                "station",
                "BOND",
                "units",
                Arrays.stream(units).map(Workshop::unit).toList());
    }

    public Acceptance scrap(String time, String... units) {
        return plant.say(
                "scrap",
                time,
                Map.of("units", Arrays.stream(units).map(Workshop::unit).toList(), "why", "broken"));
    }

    /** Asks for something to be done instead of telling it. */
    public Acceptance ask(String kind, String time, Map<String, Object> body) {
        return plant.say(kind, time, body, Manner.DO);
    }

    public static Map<String, Object> unit(String unit) {
        UnitId id = Plant.id(unit);
        return Map.of("item", id.item(), "serial", id.serial());
    }

    /** The rules that something broke when it was recorded, in the order they were noted. */
    public static List<String> rules(Acceptance accepted) {
        return accepted.findings().stream().map(RaisedFinding::rule).toList();
    }

    /** What is wrong with something that was recorded, in words. */
    public static List<String> sentences(Acceptance accepted) {
        return accepted.findings().stream().map(RaisedFinding::sentence).toList();
    }
}
