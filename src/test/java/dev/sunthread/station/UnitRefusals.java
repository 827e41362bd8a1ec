package dev.sunthread.station;

import dev.sunthread.scan.label.LabelCode;
import dev.sunthread.testing.Plant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What is scanned at a station that units, carriers, runs or records forbid. */
final class UnitRefusals {

    private static final String TRAY_1 = LabelCode.carrier("TRAY-1");
    private static final String TRAY_2 = LabelCode.carrier("TRAY-2");
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss");

    private UnitRefusals() {}

    static Stream<Refusal> all() {
        return Stream.concat(ofUnits(), ofRuns());
    }

    private static Stream<Refusal> ofUnits() {
        return Stream.of(
                Refusal.of(
                        "unit-is-born",
                        floor -> {},
                        "PACKER",
                        ".ship > Thornfield Array > P0009",
                        "Unit PAN P0009 has no birth record",
                        "Record its birth"),
                Refusal.of(
                        "unit-is-not-scrapped",
                        floor -> floor.baked("R0001")
                                .plant()
                                .say(
                                        "scrap",
                                        "08:30",
                                        Map.of("units", List.of(Plant.unit("REC R0001")), "why", "broken")),
                        "DARK",
                        "R0001",
                        "Unit REC R0001 was scrapped before",
                        "Correct the serial"),
                Refusal.of(
                        "position-takes-the-item",
                        floor -> floor.plant().birth("08:00", "MOD", "M0001"),
                        "FLOOR",
                        "W0001 > M0001",
                        "W0001 does not take M0001 now",
                        "put the unit aside first"),
                Refusal.of(
                        "nothing-is-in-two-places",
                        floor -> floor.wall("W0001", "R0001", "R0002"),
                        "FLOOR",
                        "W0002 > N-1 > R0001",
                        "is recorded as being in position P1 of unit WAL W0001",
                        "Record the removal"),
                Refusal.of(
                        "only-outermost-units-are-shipped",
                        floor -> floor.wall("W0001", "R0001", "R0002"),
                        "PACKER",
                        ".ship > Thornfield Array > R0001",
                        "was shipped while recorded as being inside another",
                        "Ship the outermost unit"),
                Refusal.of(
                        "nothing-is-on-two-carriers",
                        floor -> floor.bonded("R0001")
                                .plant()
                                .say(
                                        "carrier-load",
                                        "08:30",
                                        Map.of(
                                                "carrier",
                                                "TRAY-1",
                                                "loads",
                                                List.of(Map.of("unit", Plant.unit("REC R0001"))))),
                        "GLUE",
                        TRAY_2 + " > R0001",
                        "while recorded as being on carrier TRAY-1",
                        "Record the unload"),
                Refusal.of(
                        "no-carrier-is-in-itself",
                        floor -> floor.plant()
                                .say(
                                        "carrier-load",
                                        "08:30",
                                        Map.of("carrier", "TRAY-2", "loads", List.of(Map.of("carrier", "TRAY-1")))),
                        "GLUE",
                        TRAY_1 + " > " + TRAY_2,
                        "which is recorded as being on it then",
                        "Record the unload"),
                Refusal.of(
                        "only-what-is-on-the-carrier-is-taken-off",
                        floor -> {},
                        "GLUE",
                        TRAY_1 + " > .off",
                        "Nothing is recorded on TRAY-1",
                        "unit by unit"));
    }

    private static Stream<Refusal> ofRuns() {
        return Stream.of(
                Refusal.of(
                                "cure-run-is-recorded-once",
                                floor -> floor.bonded("R0001"),
                                "HEAT",
                                "OVEN-7 > R0001 > OVEN-7",
                                "was recorded before with another load",
                                "Give each load a number of its own")
                        .after((floor, jdbc) -> {
                            floor.bonded("R0009");
                            // a run of that number, whichever of the next seconds it begins in
                            OffsetDateTime now = OffsetDateTime.now();
                            for (int second = 0; second < 20; second++) {
                                floor.bake("OVEN-7-" + STAMP.format(now.plusSeconds(second)), "R0009");
                            }
                        }),
                Refusal.of(
                        "nothing-is-in-a-load-twice",
                        floor -> floor.bonded("R0001", "R0002"),
                        "HEAT",
                        "OVEN-7 > R0001 > R0002 > R0001",
                        "R0001 was scanned already",
                        "Scan the next one"),
                Refusal.of(
                        "equipment-was-good-at-its-last-check",
                        floor -> floor.bonded("R0001")
                                .plant()
                                .say(
                                        "verification",
                                        "08:30",
                                        Map.of("equipment", "OVEN-7", "verdict", "bad", "evidence", "as written")),
                        "HEAT",
                        "OVEN-7 > R0001",
                        "Equipment OVEN-7 was found bad at its last check",
                        "Check it again"),
                Refusal.of(
                                "entry-is-withdrawn-once",
                                floor -> {},
                                "GLUE",
                                "A-1 > V1 > .undo",
                                "was voided or corrected before",
                                "Look at what replaced it")
                        .after((floor, jdbc) -> floor.plant().undo("09:00", lastOf(jdbc))));
    }

    private static String lastOf(JdbcClient jdbc) {
        return jdbc.sql("SELECT id FROM ledger.entry WHERE kind = 'charge' ORDER BY number DESC LIMIT 1")
                .query(String.class)
                .single();
    }
}
