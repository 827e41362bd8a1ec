package dev.sunthread.demo.line;

import dev.sunthread.demo.floor.Floor;
import dev.sunthread.demo.floor.Piece;
import dev.sunthread.demo.supply.Loads;
import dev.sunthread.demo.supply.Stocks;
import dev.sunthread.demo.supply.Taken;
import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.PlantTime;
import dev.sunthread.simulator.world.Assembly;
import java.time.OffsetDateTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** Builds modules of tested walls; what was built stands for a day and is tested two working days later. */
final class Modules {

    private static final int DAYS_TO_TEST = 2;

    private final Floor floor;
    private final Loads loads;
    private final Operations operations;
    private final Runs runs;
    private final Rigs rigs;
    private final Deque<List<Module>> standing = new ArrayDeque<>();
    private final Deque<Module> tested = new ArrayDeque<>();
    private int built;
    private int dwells;

    Modules(Floor floor, Loads loads, Operations operations, Runs runs) {
        this.floor = floor;
        this.loads = loads;
        this.operations = operations;
        this.runs = runs;
        this.rigs = new Rigs(floor, "TM");
    }

    void build(int day, List<Wall> walls) {
        List<Module> modules = new ArrayList<>();
        walls.forEach(wall -> modules.add(new Module(++built, day, modules.size(), wall.piece())));
        if (!modules.isEmpty()) {
            bear(day, modules);
            modules.forEach(this::build);
            stand(day, modules);
        }
        standing.add(modules);
        if (standing.size() > DAYS_TO_TEST) {
            standing.remove().forEach(module -> test(module, day));
        }
    }

    int waiting() {
        return tested.size();
    }

    Module take() {
        return tested.remove();
    }

    /** Puts a module that came out of a panel behind the others. */
    void putBack(Module module) {
        tested.add(module);
    }

    private void bear(int day, List<Module> modules) {
        OffsetDateTime at = PlantTime.at(day, "06:05");
        List<Piece> pieces = modules.stream().map(Module::piece).toList();
        pieces.forEach(
                piece -> floor.happens(new Assembly.Birth(Floor.micros(at), piece.serial(), piece.serial(), "SEAL-1")));
        floor.crew("SEAL-1", at).tell(at, "birth", "units", Piece.json(pieces), "station", "SEAL-1");
    }

    private void build(Module module) {
        OffsetDateTime start = module.start().plusSeconds(floor.notes().between(0, 40));
        floor.happens(new Assembly.Installation(
                Floor.micros(start),
                new Assembly.Child(module.wall().serial(), null),
                module.piece().serial(),
                "WALL",
                "SEAL-1"));
        floor.crew("SEAL-1", start)
                .tell(
                        start,
                        "installation",
                        Bodies.move(module.wall().json(), module.piece().json(), "WALL", "SEAL-1"));
        seal(module, start.plusMinutes(9));
        bondMirrors(module, start.plusMinutes(60));
        close(module, start.plusMinutes(90));
    }

    private void seal(Module module, OffsetDateTime at) {
        String gun = module.index() % 2 == 0 ? "GUN-A" : "GUN-B";
        Taken silicone = loads.take("SIL-9", "SEAL-1", gun, at, "92");
        operations.doAndTell(new Operations.Done(
                        "seal", "SEAL-1", at.minusMinutes(7), at, List.of(module.piece()), false)
                .with(
                        Stocks.take("CHS-4", module.day(), "1"),
                        Mishaps.gunIsNotTold(module.day(), module.index()) ? silicone.fromSomewhere() : silicone)
                .measured("bead-mass", "%d".formatted(floor.notes().between(88, 96)), "g"));
    }

    private void bondMirrors(Module module, OffsetDateTime at) {
        operations.doAndTell(new Operations.Done(
                        "mirror", "MIRROR-1", at.minusMinutes(18), at, List.of(module.piece()), false)
                .with(Stocks.take("MIR-6", module.day(), "4"), loads.take("EPX-1", "MIRROR-1", "MIX", at, "26")));
    }

    private void close(Module module, OffsetDateTime at) {
        String glass = Stocks.take("GLS-2", module.day(), "1").truly().source().lot();
        floor.happens(new Assembly.Installation(
                Floor.micros(at),
                new Assembly.Child(null, glass),
                module.piece().serial(),
                "GLASS",
                "GLASS-1"));
        floor.crew("GLASS-1", at)
                .tell(
                        at,
                        "installation",
                        "child",
                        Bodies.of("lot", glass, "quantity", "1", "unitOfMeasure", "pcs"),
                        "parent",
                        module.piece().json(),
                        "position",
                        "GLASS",
                        "station",
                        "GLASS-1");
        OffsetDateTime closed = at.plusMinutes(6);
        operations.doAndTell(
                new Operations.Done("glass", "GLASS-1", at.plusMinutes(1), closed, List.of(module.piece()), false)
                        .with(loads.take("SIL-9", "GLASS-1", "GUN", closed, "60")));
    }

    private void stand(int day, List<Module> modules) {
        OffsetDateTime start = PlantTime.at(day, "22:30");
        OffsetDateTime end = PlantTime.local(start.plusHours(24));
        Runs.Run run = new Runs.Run(
                "DW-%04d".formatted(++dwells), "DWELL-24", "ROOM-" + (1 + dwells % 2), "GLASS-1", start, end);
        runs.cure(run, modules.stream().map(Module::piece).toList());
    }

    private void test(Module module, int day) {
        rigs.test(
                module.piece(), "MOD-IV", "RIG-M1", PlantTime.at(day, "06:40").plusMinutes(14L * module.index()), true);
        tested.add(module);
    }
}
