package dev.sunthread.station;

import dev.sunthread.testing.Plant;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** What is scanned at a station against a route or a hold. */
final class RouteRefusals {

    private static final int TEN_YEARS = 315_360_000;
    private static final String MISSING = "Do what is missing first";
    private static final String ASK_QUALITY = "ask quality";

    private RouteRefusals() {}

    static Stream<Refusal> all() {
        return Stream.concat(ofRoutes(), ofHolds());
    }

    private static Stream<Refusal> ofRoutes() {
        return Stream.of(
                Refusal.of(
                        "earlier-operations-are-done-before-the-next",
                        floor -> floor.plant().birth("08:00", "WAL", "W0001"),
                        "COATER",
                        "K-1 > POT > W0001",
                        "Unit WAL W0001 has no record of fasten",
                        MISSING),
                Refusal.of(
                        "operation-is-done-once",
                        floor -> floor.bonded("R0001"),
                        "GLUE",
                        ".again > R0001 > .1",
                        "Unit REC R0001 has bond recorded already",
                        "have somebody who may judge sign that"),
                Refusal.of(
                        "operation-begins-after-its-dwell",
                        coating("windows", List.of(Map.of("after", "fasten", "atLeast", TEN_YEARS))),
                        "COATER",
                        "K-1 > POT > W0001",
                        "have to pass",
                        "Wait until the time is over"),
                Refusal.of(
                        "operation-begins-within-its-window",
                        coating("windows", List.of(Map.of("after", "fasten", "atMost", 60))),
                        "COATER",
                        "K-1 > POT > W0001",
                        "it is too late after 0 h 1 min",
                        ASK_QUALITY),
                Refusal.of(
                        "operator-is-qualified",
                        coating("qualified", true),
                        "COATER",
                        "K-1 > POT > W0001",
                        "op-1 is not qualified for operation coat",
                        "Have it done by somebody who is"),
                Refusal.of(
                        "taken-in-item-is-one-that-the-operation-consumes",
                        floor -> {},
                        "GLUE",
                        "R0001 > N-1",
                        "R0001 does not take N-1 now",
                        "put the unit aside first"),
                Refusal.of(
                        "demanded-cure-is-done-before-the-next-operation",
                        floor -> floor.bonded("R0001"),
                        "DARK",
                        "R0001",
                        "has no cure by recipe BAKE",
                        "Do it first"),
                Refusal.of(
                        "demanded-test-is-passed-before-the-next-operation",
                        floor -> floor.baked("R0001").flashed("R0001"),
                        "FLOOR",
                        "W0001 > N-1 > R0001",
                        "of test FLASH",
                        "have the deviation signed"));
    }

    private static Consumer<LineFloor> coating(String term, Object value) {
        return floor -> {
            floor.wall("W0001", "R0001", "R0002");
            floor.floor()
                    .route(
                            "WAL",
                            "B",
                            ShopFloor.operation("fasten", "FLOOR", List.of("REC", "FST")),
                            ShopFloor.operation("coat", "COATER", List.of("CC"), term, value));
        };
    }

    private static Stream<Refusal> ofHolds() {
        return Stream.of(
                Refusal.of(
                        "unit-is-not-on-hold",
                        floor -> floor.baked("R0001").hold("units", Plant.unit("REC R0001")),
                        "DARK",
                        "R0001",
                        "Unit REC R0001 is on hold: Supplier's notice",
                        ASK_QUALITY),
                Refusal.of(
                        "nothing-inside-is-on-hold",
                        floor -> floor.wall("W0001", "R0001", "R0002").hold("units", Plant.unit("REC R0001")),
                        "COATER",
                        "K-1 > POT > W0001",
                        "has REC R0001 inside, which is on hold",
                        ASK_QUALITY),
                Refusal.of(
                        "nothing-around-it-is-on-hold",
                        floor -> {
                            floor.baked("R0001").plant().birth("08:00", "WAL", "W0001");
                            floor.plant().install("08:40", "REC R0001", "WAL W0001", "P1");
                            floor.hold("units", Plant.unit("WAL W0001"));
                        },
                        "DARK",
                        "R0001",
                        "is built together with WAL W0001, which is on hold",
                        ASK_QUALITY),
                Refusal.of(
                        "no-lot-in-it-is-on-hold",
                        floor -> floor.baked("R0001").hold("lots", "A-1"),
                        "DARK",
                        "R0001",
                        "Lot A-1, which went into unit REC R0001",
                        ASK_QUALITY),
                Refusal.of(
                        "lot-is-not-on-hold",
                        floor -> floor.hold("lots", "A-1"),
                        "GLUE",
                        "A-1",
                        "Lot A-1 is on hold: Supplier's notice",
                        ASK_QUALITY),
                Refusal.of(
                        "container-is-not-on-hold",
                        floor -> floor.syringes().hold("containers", "S-1"),
                        "GLUE",
                        "V1 > S-1",
                        "Container S-1 is on hold",
                        ASK_QUALITY));
    }
}
