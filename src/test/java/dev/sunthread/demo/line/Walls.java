package dev.sunthread.demo.line;

import dev.sunthread.demo.floor.Floor;
import dev.sunthread.demo.floor.Piece;
import dev.sunthread.demo.supply.Loads;
import dev.sunthread.demo.told.PlantTime;
import dev.sunthread.simulator.world.Assembly;
import java.time.OffsetDateTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** Builds a day's walls: fastened and soldered one by one, coated, fitted and lit three at a time, then tested. */
final class Walls {

    static final int TOGETHER = 3;
    private static final int IN_RESERVE = 12;

    private final Floor floor;
    private final Stock stock;
    private final Loads loads;
    private final Operations operations;
    private final Fastening fastening;
    private final Optics optics;
    private final Flashing tests;
    private final Deque<Wall> tested = new ArrayDeque<>();
    private int built;

    Walls(Floor floor, Stock stock, Loads loads, Operations operations, Runs runs) {
        this.floor = floor;
        this.stock = stock;
        this.loads = loads;
        this.operations = operations;
        this.fastening = new Fastening(floor, stock, operations);
        this.optics = new Optics(floor, loads, operations, runs);
        this.tests = new Flashing(floor, fastening, operations, loads);
    }

    /** Builds what the stock gives; what passed goes on to the modules of the next days. */
    void build(int day) {
        stock.beginDay();
        List<Wall> walls = begin(day);
        for (int from = 0; from < walls.size(); from += TOGETHER) {
            together(new ArrayList<>(walls.subList(from, Math.min(walls.size(), from + TOGETHER))));
        }
        if (day == 43) {
            fastening.holdOne(day);
        }
    }

    List<Wall> takeTested(int most) {
        List<Wall> taken = new ArrayList<>();
        while (taken.size() < most && !tested.isEmpty()) {
            taken.add(tested.remove());
        }
        return taken;
    }

    private List<Wall> begin(int day) {
        int count = Math.min((stock.size() - IN_RESERVE) / Wall.SIZE, floor.traysADay() * Tray.SIZE / Wall.SIZE + 1);
        List<Wall> walls = new ArrayList<>();
        for (int index = 0; index < count; index++) {
            walls.add(Wall.empty(++built, day, index));
        }
        if (!walls.isEmpty()) {
            OffsetDateTime at = PlantTime.at(day, "06:02");
            walls.forEach(wall -> floor.happens(new Assembly.Birth(
                    Floor.micros(at), wall.piece().serial(), wall.piece().serial(), "WALL-1")));
            List<Piece> pieces = walls.stream().map(Wall::piece).toList();
            floor.crew("WALL-1", at).tell(at, "birth", "units", Piece.json(pieces), "station", "WALL-1");
        }
        return walls;
    }

    private void together(List<Wall> walls) {
        walls.forEach(fastening::build);
        walls.removeIf(this::fallsBeforeSoldering);
        walls.forEach(this::solder);
        if (walls.isEmpty()) {
            return;
        }
        OffsetDateTime coated = walls.get(walls.size() - 1).start().plusMinutes(72);
        coat(walls, coated);
        walls.removeIf(wall -> isScrappedAfterCoating(wall, coated));
        OffsetDateTime lit = optics.mount(walls, coated.plusMinutes(30));
        for (Wall wall : walls) {
            tests.test(wall, lit.plusMinutes(12L + 4 * (wall.index() % TOGETHER)));
            if (!Mishaps.heldReceiverIsPutIn(wall.day(), wall.index(), Wall.SIZE)) {
                tested.add(wall);
            }
        }
    }

    private void solder(Wall wall) {
        String station = "SOLDER-" + (1 + wall.index() % 2);
        OffsetDateTime at =
                wall.start().plusMinutes(44).plusSeconds(floor.notes().between(-30, 30));
        operations.doAndTell(soldering(wall, station, at));
    }

    private Operations.Done soldering(Wall wall, String station, OffsetDateTime at) {
        return new Operations.Done("solder", station, at.minusMinutes(12), at, List.of(wall.piece()), false)
                .with(loads.take("SW-60", station, "WIRE", at, "2.6"), loads.take("FLX-2", station, "FLUX", at, "1.1"))
                .measured("soldering-temperature", "%d".formatted(floor.notes().between(341, 349)), "degC");
    }

    private void coat(List<Wall> walls, OffsetDateTime at) {
        List<Piece> pieces = walls.stream().map(Wall::piece).toList();
        operations.doAndTell(new Operations.Done("coat", "COAT-1", at.minusMinutes(20), at, pieces, false)
                .with(loads.take("CC-8", "COAT-1", "POT", at, "18"))
                .measured("coat-thickness", "%d".formatted(floor.notes().between(38, 46)), "um"));
    }

    private boolean fallsBeforeSoldering(Wall wall) {
        boolean falls = Mishaps.wallFallsBeforeSoldering(wall.day(), wall.index());
        if (falls) {
            scrap(wall, wall.start().plusMinutes(35), "Fell from the bench; the plate is bent", 3);
        }
        return falls;
    }

    private boolean isScrappedAfterCoating(Wall wall, OffsetDateTime coated) {
        boolean scrapped = Mishaps.wallIsScrappedAfterCoating(wall.day(), wall.index());
        if (scrapped) {
            scrap(wall, coated.plusMinutes(18), "Plate found warped after coating", 4);
        }
        return scrapped;
    }

    /** Throws a wall away and lays some of its receivers aside for another. */
    private void scrap(Wall wall, OffsetDateTime at, String why, int salvaged) {
        floor.happens(new Assembly.Scrap(Floor.micros(at), wall.piece().serial()));
        floor.crew(wall.station(), at)
                .tell(at, "scrap", "units", List.of(wall.piece().json()), "why", why, "station", wall.station());
        for (int position = 1; position <= salvaged; position++) {
            Piece receiver = wall.receivers().get(position - 1);
            fastening.remove(wall, position, receiver, at.plusMinutes(20L + 2 * position), null);
            stock.layAside(receiver);
        }
    }
}
