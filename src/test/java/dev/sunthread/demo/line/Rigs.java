package dev.sunthread.demo.line;

import dev.sunthread.demo.floor.Floor;
import dev.sunthread.demo.floor.Piece;
import dev.sunthread.demo.told.Bodies;
import dev.sunthread.simulator.world.Work;
import java.time.OffsetDateTime;
import java.util.List;
import tools.jackson.databind.node.ObjectNode;

/** Tests of single units on rigs. */
final class Rigs {

    private final Floor floor;
    private final Curves curves;
    private final String beginning;
    private int tests;

    /** Rigs whose runs are numbered behind a beginning. */
    Rigs(Floor floor, String beginning) {
        this.floor = floor;
        this.curves = new Curves(floor.notes());
        this.beginning = beginning;
    }

    void test(Piece unit, String specification, String rig, OffsetDateTime at, boolean passes) {
        String run = "%s-%05d".formatted(beginning, ++tests);
        OffsetDateTime start = at.minusMinutes(2);
        floor.happens(new Work.Test(Floor.micros(at), Floor.micros(start), run, unit.serial(), specification, rig));
        floor.crew("TEST-1", at)
                .tell(
                        at,
                        "test-run",
                        "run",
                        run,
                        "unit",
                        unit.json(),
                        "specification",
                        specification,
                        "equipment",
                        rig,
                        "startedAt",
                        start,
                        "verdict",
                        passes ? "pass" : "fail",
                        "sweeps",
                        sweeps(specification, passes),
                        "readings",
                        readings(specification));
    }

    private List<ObjectNode> readings(String specification) {
        return specification.equals("PAN-GND")
                ? List.of(
                        reading("ground", "0.4" + floor.notes().between(1, 9), "10", "3"),
                        reading(
                                "insulation",
                                "1000",
                                "0.0000000" + floor.notes().between(11, 89),
                                "60"))
                : List.of();
    }

    private static ObjectNode reading(String path, String volts, String amperes, String seconds) {
        return Bodies.of("path", path, "volts", volts, "amperes", amperes, "seconds", seconds);
    }

    private List<ObjectNode> sweeps(String specification, boolean sound) {
        return switch (specification) {
            case "WAL-IV" -> List.of(curves.sweep(4.12, sound));
            case "MOD-IV" -> List.of(curves.sweep(3.86, sound));
            default -> List.of();
        };
    }
}
