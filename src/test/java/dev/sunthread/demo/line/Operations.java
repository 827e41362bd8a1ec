package dev.sunthread.demo.line;

import dev.sunthread.demo.floor.Floor;
import dev.sunthread.demo.floor.Piece;
import dev.sunthread.demo.supply.Taken;
import dev.sunthread.demo.told.Bodies;
import dev.sunthread.simulator.world.Work;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.stream.Stream;
import tools.jackson.databind.node.ObjectNode;

/** Operations of the routes: they truly happen, and are told as steps. */
final class Operations {

    /** An operation done on some units, with what it took in and what was measured. */
    record Done(
            String operation,
            String station,
            OffsetDateTime start,
            OffsetDateTime at,
            List<Piece> units,
            boolean alone,
            List<Taken> uses,
            List<ObjectNode> values) {

        Done(
                String operation,
                String station,
                OffsetDateTime start,
                OffsetDateTime at,
                List<Piece> units,
                boolean alone) {
            this(operation, station, start, at, units, alone, List.of(), List.of());
        }

        Done with(Taken... taken) {
            return new Done(operation, station, start, at, units, alone, List.of(taken), values);
        }

        Done measured(String name, String value, String unitOfMeasure) {
            return new Done(
                    operation,
                    station,
                    start,
                    at,
                    units,
                    alone,
                    uses,
                    Stream.concat(values.stream(), Stream.of(Bodies.value(name, value, unitOfMeasure)))
                            .toList());
        }

        ObjectNode json() {
            return Bodies.of(
                    "operation",
                    operation,
                    "station",
                    station,
                    "units",
                    Piece.json(units),
                    "startedAt",
                    start,
                    "uses",
                    uses.stream().map(Taken::json).toList(),
                    "values",
                    values);
        }
    }

    private final Floor floor;
    private int untold;

    Operations(Floor floor) {
        this.floor = floor;
    }

    String doAndTell(Done done) {
        return doAndTell(done, done.json());
    }

    /** Does it and tells it otherwise than it is; gives the id it is told under. */
    String doAndTell(Done done, ObjectNode told) {
        String id = floor.crew(done.station(), done.at()).tell(done.at(), "step", told);
        happen(done, id);
        return id;
    }

    /** Does it, and nobody tells. */
    void happen(Done done) {
        happen(done, "untold-" + ++untold);
    }

    void happen(Done done, String id) {
        floor.happens(new Work.Step(
                Floor.micros(done.at()),
                Floor.micros(done.start()),
                id,
                done.operation(),
                done.station(),
                Piece.serials(done.units()),
                done.alone(),
                done.uses().stream().map(Taken::truly).toList()));
    }
}
