package dev.sunthread.demo.line;

import dev.sunthread.demo.floor.Floor;
import dev.sunthread.demo.floor.Piece;
import dev.sunthread.demo.supply.Stocks;
import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.PlantTime;
import dev.sunthread.simulator.world.Assembly;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Puts receivers into the positions of walls and fastens them. */
final class Fastening {

    private final Floor floor;
    private final Stock stock;
    private final Operations operations;
    private @Nullable Piece held;

    Fastening(Floor floor, Stock stock, Operations operations) {
        this.floor = floor;
        this.stock = stock;
        this.operations = operations;
    }

    void build(Wall wall) {
        for (int position = 1; position <= Wall.SIZE; position++) {
            OffsetDateTime at = wall.timeOf(position).plusSeconds(floor.notes().between(-20, 20));
            if (Mishaps.positionIsFilledTwice(wall.day(), wall.index(), position)) {
                fillTwice(wall, position, at);
            } else {
                fill(wall, position, at);
            }
        }
        OffsetDateTime at = wall.start().plusMinutes(27);
        operations.doAndTell(new Operations.Done(
                        "fasten", wall.station(), at.minusMinutes(3), at, List.of(wall.piece()), false)
                .with(Stocks.take("FST-8", wall.day(), "24"))
                .measured("torque", "0.%d".formatted(floor.notes().between(47, 53)), "N.m"));
    }

    private void fill(Wall wall, int position, OffsetDateTime at) {
        if (Mishaps.heldReceiverIsPutIn(wall.day(), wall.index(), position) && held != null) {
            happens(wall, position, held, at);
            OffsetDateTime later = PlantTime.at(wall.day() + 1, "06:12");
            floor.crew(wall.station(), at).tellLate(at, later, "installation", move(wall, position, held));
            return;
        }
        Piece receiver = stock.take();
        happens(wall, position, receiver, at);
        if (!Mishaps.installationIsNeverTold(wall.day(), wall.index(), position)) {
            floor.crew(wall.station(), at).tell(at, "installation", move(wall, position, receiver));
        }
    }

    /** A receiver is put on hold in the afternoon and lies in the wrong place the next morning. */
    void holdOne(int day) {
        Piece receiver = stock.take();
        held = receiver;
        floor.quality()
                .tell(
                        PlantTime.at(day, "22:40"),
                        "hold",
                        "units",
                        List.of(receiver.json()),
                        "reason",
                        "Scratch seen on the cell; waits for a look under the microscope");
    }

    // the scan of the removal between the two waits in a scanner that is out of reach
    private void fillTwice(Wall wall, int position, OffsetDateTime at) {
        Piece takenOut = stock.take();
        Piece staying = stock.take();
        String station = wall.station();
        floor.happens(new Assembly.Installation(
                Floor.micros(at), child(takenOut), wall.piece().serial(), "R" + position, station));
        floor.crew(station, at).tell(at, "installation", move(wall, position, takenOut));
        remove(wall, position, takenOut, at.plusSeconds(40), PlantTime.at(wall.day(), "09:41"));
        happens(wall, position, staying, at.plusSeconds(80));
        String conflict =
                floor.crew(station, at).tell(at.plusSeconds(80), "installation", move(wall, position, staying));
        stock.add(List.of(takenOut));
        floor.quality()
                .tell(
                        PlantTime.at(wall.day(), "10:05"),
                        "finding-settlement",
                        "entry",
                        conflict,
                        "finding",
                        1,
                        "why",
                        "The receiver put in first was taken out for a bent lead; its scan came late");
    }

    void remove(Wall wall, int position, Piece receiver, OffsetDateTime at, @Nullable OffsetDateTime recordedAt) {
        floor.happens(new Assembly.Removal(
                Floor.micros(at), child(receiver), wall.piece().serial(), "R" + position, wall.station()));
        if (recordedAt == null) {
            floor.crew(wall.station(), at).tell(at, "removal", move(wall, position, receiver));
        } else {
            floor.crew(wall.station(), at).tellLate(at, recordedAt, "removal", move(wall, position, receiver));
        }
    }

    /** Puts another receiver where one failed, and gives the one that came out. */
    Piece exchange(Wall wall, int position, OffsetDateTime at) {
        Piece out = wall.receivers().get(position - 1);
        remove(wall, position, out, at, null);
        Piece in = stock.take();
        floor.happens(new Assembly.Installation(
                Floor.micros(at.plusMinutes(4)), child(in), wall.piece().serial(), "R" + position, wall.station()));
        floor.crew(wall.station(), at).tell(at.plusMinutes(4), "installation", move(wall, position, in));
        wall.receivers().set(position - 1, in);
        return out;
    }

    private void happens(Wall wall, int position, Piece receiver, OffsetDateTime at) {
        floor.happens(new Assembly.Installation(
                Floor.micros(at), child(receiver), wall.piece().serial(), "R" + position, wall.station()));
        wall.receivers().add(receiver);
    }

    private static Assembly.Child child(Piece receiver) {
        return new Assembly.Child(receiver.serial(), null);
    }

    private static tools.jackson.databind.node.ObjectNode move(Wall wall, int position, Piece receiver) {
        return Bodies.move(receiver.json(), wall.piece().json(), "R" + position, wall.station());
    }
}
