package dev.sunthread.demo.line;

import dev.sunthread.demo.floor.Floor;
import dev.sunthread.demo.floor.Piece;
import dev.sunthread.demo.supply.Loads;
import dev.sunthread.simulator.world.Assembly;
import java.time.OffsetDateTime;
import java.util.List;

/** Tests walls under flash; of a wall that fails, the weakest receiver is exchanged and the wall is tested again. */
final class Flashing {

    private static final int ONE_FAILS_IN = 28;

    private final Floor floor;
    private final Fastening fastening;
    private final Operations operations;
    private final Loads loads;
    private final Rigs rigs;

    Flashing(Floor floor, Fastening fastening, Operations operations, Loads loads) {
        this.floor = floor;
        this.fastening = fastening;
        this.operations = operations;
        this.loads = loads;
        this.rigs = new Rigs(floor, "TW");
    }

    void test(Wall wall, OffsetDateTime at) {
        String rig = "RIG-W" + (1 + wall.index() % 2);
        boolean fails = floor.notes().onceIn(ONE_FAILS_IN);
        rigs.test(wall.piece(), "WAL-IV", rig, at, !fails);
        if (fails) {
            rework(wall, at.plusMinutes(14));
            rigs.test(wall.piece(), "WAL-IV", rig, at.plusMinutes(40), true);
        }
    }

    private void rework(Wall wall, OffsetDateTime at) {
        Piece weak = fastening.exchange(wall, floor.notes().between(1, Wall.SIZE), at);
        OffsetDateTime soldered = at.plusMinutes(14);
        operations.doAndTell(
                new Operations.Done("solder", "SOLDER-1", at.plusMinutes(8), soldered, List.of(wall.piece()), false)
                        .with(
                                loads.take("SW-60", "SOLDER-1", "WIRE", soldered, "0.3"),
                                loads.take("FLX-2", "SOLDER-1", "FLUX", soldered, "0.2")));
        OffsetDateTime thrown = soldered.plusMinutes(4);
        floor.happens(new Assembly.Scrap(Floor.micros(thrown), weak.serial()));
        floor.crew(wall.station(), thrown)
                .tell(
                        thrown,
                        "scrap",
                        "units",
                        List.of(weak.json()),
                        "why",
                        "Too little current",
                        "station",
                        wall.station());
    }
}
