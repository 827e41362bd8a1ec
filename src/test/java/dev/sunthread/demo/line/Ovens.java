package dev.sunthread.demo.line;

import dev.sunthread.demo.floor.Floor;
import dev.sunthread.demo.floor.Piece;
import dev.sunthread.simulator.world.Assembly;
import dev.sunthread.simulator.world.Heat;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;

/** Cures bonded trays, five to a load, and sorts out what cracked. */
final class Ovens {

    private static final int OF_A_LOAD = 5;
    private static final int ONE_CRACKS_IN = 70;

    private final Floor floor;
    private final Runs runs;
    private final Operations operations;
    private int loads;

    Ovens(Floor floor, Runs runs, Operations operations) {
        this.floor = floor;
        this.runs = runs;
        this.operations = operations;
    }

    /** Cures a day's trays and gives the receivers that are fit for a wall. */
    List<Piece> cure(List<Tray> trays) {
        List<Piece> fit = new ArrayList<>();
        for (int from = 0; from < trays.size(); from += OF_A_LOAD) {
            fit.addAll(load(trays.subList(from, Math.min(trays.size(), from + OF_A_LOAD))));
        }
        return fit;
    }

    private List<Piece> load(List<Tray> trays) {
        OffsetDateTime start = trays.get(trays.size() - 1).end().plusMinutes(20);
        OffsetDateTime end = start.plusMinutes(105);
        trays.forEach(tray -> putOn(tray, start.minusMinutes(8)));
        List<String> all = trays.stream().map(Tray::carrier).toList();
        List<String> told = trays.stream()
                .filter(tray -> !Mishaps.trayIsNotToldInItsRun(tray.day(), tray.index()))
                .map(Tray::carrier)
                .toList();
        String oven = "OVEN-" + (1 + (loads + loads / 4) % 2);
        runs.cure(new Runs.Run("CR-%04d".formatted(++loads), "TIM-150", oven, "OVEN", start, end), all, told);
        List<Piece> fit = new ArrayList<>();
        trays.forEach(tray -> fit.addAll(takeOff(tray, end.plusMinutes(12))));
        return fit;
    }

    private void putOn(Tray tray, OffsetDateTime at) {
        tray.receivers()
                .forEach(piece ->
                        floor.happens(new Heat.Load(Floor.micros(at), tray.carrier(), piece.serial(), true, "OVEN")));
        floor.crew("OVEN", at)
                .tell(at, "carrier-load", "carrier", tray.carrier(), "loads", tray.loads(), "station", "OVEN");
    }

    private List<Piece> takeOff(Tray tray, OffsetDateTime at) {
        floor.happens(new Heat.Emptying(Floor.micros(at), tray.carrier(), "OVEN"));
        if (!Mishaps.unloadIsNeverTold(tray.day(), tray.index())) {
            floor.crew("OVEN", at).tell(at, "carrier-unload", "carrier", tray.carrier(), "station", "OVEN");
        }
        return sort(tray, at.plusMinutes(25 + tray.number() % 5));
    }

    private List<Piece> sort(Tray tray, OffsetDateTime at) {
        operations.doAndTell(new Operations.Done("sort", "SORT-1", at.minusMinutes(8), at, tray.receivers(), true));
        List<Piece> cracked = tray.receivers().stream()
                .filter(piece -> floor.notes().onceIn(ONE_CRACKS_IN))
                .toList();
        if (!cracked.isEmpty()) {
            cracked.forEach(
                    piece -> floor.happens(new Assembly.Scrap(Floor.micros(at.plusMinutes(2)), piece.serial())));
            floor.crew("SORT-1", at)
                    .tell(
                            at.plusMinutes(2),
                            "scrap",
                            "units",
                            Piece.json(cracked),
                            "why",
                            "Cracked cell",
                            "station",
                            "SORT-1");
        }
        return tray.receivers().stream()
                .filter(piece -> !cracked.contains(piece))
                .toList();
    }
}
