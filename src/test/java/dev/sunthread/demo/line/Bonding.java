package dev.sunthread.demo.line;

import dev.sunthread.demo.floor.Floor;
import dev.sunthread.demo.floor.Piece;
import dev.sunthread.demo.supply.Loads;
import dev.sunthread.demo.supply.Stocks;
import dev.sunthread.demo.supply.Taken;
import dev.sunthread.demo.told.PlantTime;
import dev.sunthread.demo.told.Teller;
import dev.sunthread.simulator.world.Assembly;
import dev.sunthread.simulator.world.Place;
import java.time.OffsetDateTime;
import tools.jackson.databind.node.ObjectNode;

/** Gives receivers their serials and bonds their cells: one station scans each cartridge, the other trusts its charge. */
final class Bonding {

    private final Floor floor;
    private final Loads loads;
    private final Operations operations;

    Bonding(Floor floor, Loads loads, Operations operations) {
        this.floor = floor;
        this.loads = loads;
        this.operations = operations;
    }

    void bond(Tray tray) {
        OffsetDateTime birth = tray.start().minusMinutes(3);
        tray.receivers()
                .forEach(piece -> floor.happens(
                        new Assembly.Birth(Floor.micros(birth), piece.serial(), piece.serial(), tray.bonder())));
        floor.crew(tray.bonder(), birth)
                .tell(birth, "birth", "units", Piece.json(tray.receivers()), "station", tray.bonder());
        for (int row = 0; row < Tray.ROWS; row++) {
            bond(tray, row);
        }
    }

    private void bond(Tray tray, int row) {
        OffsetDateTime at = tray.end(row).plusSeconds(floor.notes().between(-40, 40));
        Operations.Done done = new Operations.Done("bond", tray.bonder(), at.minusMinutes(15), at, tray.row(row), true)
                .with(cell(tray, row), Stocks.take("HSP-12", tray.day(), "1"), adhesive(tray, row, at))
                .measured("dispensed-mass", "0.%d".formatted(floor.notes().between(171, 189)), "g")
                .measured("placement-force", "%d.%d".formatted(floor.notes().between(7, 8), row), "N");
        if (Mishaps.bondIsNeverTold(tray.day(), tray.index(), row)) {
            operations.happen(done);
        } else if (Mishaps.wrongCellIsScanned(tray.day(), tray.index(), row)) {
            tellWrongly(done, tray.day());
        } else {
            operations.doAndTell(done);
        }
    }

    private void tellWrongly(Operations.Done done, int day) {
        ObjectNode right = done.json();
        ObjectNode wrong = right.deepCopy();
        ((ObjectNode) wrong.get("uses").get(0))
                .put("lot", Stocks.take("CELL-30", day - 5, "1").lot());
        String id = operations.doAndTell(done, wrong);
        Teller quality = floor.quality();
        quality.tell(
                PlantTime.at(day, "15:20"),
                "correction",
                "entry",
                id,
                "why",
                "An empty cell tray was scanned; the label of the full one was read again",
                "body",
                right);
    }

    private Taken cell(Tray tray, int row) {
        Taken cell = Stocks.take("CELL-30", tray.day(), "1");
        return Mishaps.cellHasNoLabel(tray.day(), tray.index(), row) ? cell.unlabelled() : cell;
    }

    private Taken adhesive(Tray tray, int row, OffsetDateTime at) {
        Place valve = new Place(tray.bonder(), row % 2 == 0 ? "V1" : "V2");
        Taken taken = loads.take("TIM-5", valve.station(), valve.position(), at, "0.18");
        if (Mishaps.oldCartridgeIsScanned(tray.day(), tray.index(), row)) {
            return taken.mistakenFor(loads.at(valve, at.minusDays(5)).lot());
        }
        return tray.bonder().equals("BOND-2") ? taken.unlabelled() : taken;
    }
}
