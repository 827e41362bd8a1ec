package dev.sunthread.demo.line;

import dev.sunthread.demo.floor.Floor;
import dev.sunthread.demo.floor.Piece;
import dev.sunthread.demo.supply.Loads;
import dev.sunthread.demo.supply.Stocks;
import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.PlantTime;
import java.time.OffsetDateTime;
import java.util.List;
import tools.jackson.databind.node.ObjectNode;

/** Mounts shields and optics on walls and fixes the optics under the lamp, with the wrong scans that operators make. */
final class Optics {

    private final Floor floor;
    private final Loads loads;
    private final Operations operations;
    private final Runs runs;
    private int lit;

    Optics(Floor floor, Loads loads, Operations operations, Runs runs) {
        this.floor = floor;
        this.loads = loads;
        this.operations = operations;
        this.runs = runs;
    }

    /** Fits some walls one after the other, lights them together, and gives when that was over. */
    OffsetDateTime mount(List<Wall> walls, OffsetDateTime begin) {
        OffsetDateTime at = begin;
        for (Wall wall : walls) {
            at = at.plusMinutes(7);
            mount(wall, walls.get(0), at);
        }
        OffsetDateTime start = at.plusMinutes(4);
        Runs.Run run =
                new Runs.Run("UV-%04d".formatted(++lit), "UV-365", "UVT-1", "LAMP-1", start, start.plusMinutes(3));
        runs.cure(run, walls.stream().map(Wall::piece).toList());
        return run.end();
    }

    private void mount(Wall wall, Wall other, OffsetDateTime at) {
        Operations.Done done = of(wall, at);
        if (Mishaps.opticIsToldOfAnother(wall.day(), wall.index())) {
            tellOfAnother(done, other);
        } else if (Mishaps.opticStaysInTheInbox(wall.day(), wall.index())) {
            operations.happen(done);
            new MisreadScan(floor).keep(at, done.json());
        } else {
            operations.doAndTell(done);
        }
    }

    private Operations.Done of(Wall wall, OffsetDateTime at) {
        return new Operations.Done("optic", "OPTIC-1", at.minusMinutes(6), at, List.of(wall.piece()), false)
                .with(
                        Stocks.take("SHD-3", wall.day(), "12"),
                        Stocks.take("SOE-14", wall.day(), "12"),
                        loads.take("UVA-7", "OPTIC-1", "UV", at, "1.2"));
    }

    // found out when the panel had long left
    private void tellOfAnother(Operations.Done done, Wall other) {
        ObjectNode right = done.json();
        ObjectNode wrong = right.deepCopy();
        wrong.set(
                "units", Bodies.of("units", Piece.json(List.of(other.piece()))).get("units"));
        String id = operations.doAndTell(done, wrong);
        OffsetDateTime found = PlantTime.at(other.day() + 14, "09:10");
        floor.quality().tell(found, "void", "entry", id, "why", "The wall beside it was scanned");
        floor.crew("OPTIC-1", done.at()).tellLate(done.at(), found.plusMinutes(6), "step", right);
    }
}
