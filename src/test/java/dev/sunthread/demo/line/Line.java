package dev.sunthread.demo.line;

import dev.sunthread.demo.floor.Floor;
import dev.sunthread.demo.supply.Cartridges;
import dev.sunthread.demo.supply.Changes;
import dev.sunthread.demo.supply.Definitions;
import dev.sunthread.demo.supply.Loads;
import dev.sunthread.demo.supply.Receipts;
import dev.sunthread.demo.supply.Revisions;
import dev.sunthread.demo.told.PlantTime;
import java.util.ArrayList;
import java.util.List;

/** Runs the whole line, working day by working day. */
public final class Line {

    private static final int FIRST_WALLS = 1;
    private static final int NIGHT = 29;

    private final Floor floor;
    private final Loads loads;
    private final Cartridges cartridges;
    private final Changes changes;
    private final Checks checks;
    private final Stock stock;
    private final Bonding bonding;
    private final Ovens ovens;
    private final Walls walls;
    private final Modules modules;
    private final Panels panels;
    private int trays;

    public Line(Floor floor) {
        this.floor = floor;
        this.loads = new Loads(floor);
        this.cartridges = new Cartridges(floor, loads);
        this.changes = new Changes(floor, loads);
        this.checks = new Checks(floor);
        this.stock = new Stock(floor.notes());
        Operations operations = new Operations(floor);
        Runs runs = new Runs(floor);
        this.bonding = new Bonding(floor, loads, operations);
        this.ovens = new Ovens(floor, runs, operations);
        this.walls = new Walls(floor, stock, loads, operations, runs);
        this.modules = new Modules(floor, loads, operations, runs);
        this.panels = new Panels(floor, modules, operations, loads);
    }

    /** Everything from the definitions to the last working day. */
    public void work() {
        new Outage(floor.notes()).tell();
        Definitions definitions = new Definitions(floor);
        definitions.tell();
        checks.before();
        new Revisions(floor).tell();
        new Receipts(floor).tell();
        for (int day = 0; day < PlantTime.WORKDAYS; day++) {
            work(day);
        }
        definitions.tellWhatScansGoBy();
    }

    private void work(int day) {
        changes.on(day);
        cartridges.on(day);
        checks.on(day);
        panels.work(day);
        modules.build(day, walls.takeTested(floor.traysADay() * Tray.SIZE / Wall.SIZE + 1));
        if (day >= FIRST_WALLS) {
            walls.build(day);
        }
        List<Tray> bonded = new ArrayList<>();
        for (int index = 0; index < floor.traysADay(); index++) {
            Tray tray = Tray.of(trays++, day, index);
            bonding.bond(tray);
            bonded.add(tray);
        }
        stock.add(ovens.cure(bonded));
        if (day == NIGHT) {
            Tray tray = Tray.ofTheNight(trays++, day);
            bonding.bond(tray);
            stock.add(ovens.cure(List.of(tray)));
        }
    }
}
