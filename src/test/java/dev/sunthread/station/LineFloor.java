package dev.sunthread.station;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Plant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A {@link ShopFloor} that goes on to the end of the line: receivers are flashed at DARK, of two of them a wall is made,
 * of a wall a module {@code M####} at CLOSER, of a module a panel {@code P####} at FRAMER, which is packed at PACKER.
 */
record LineFloor(ShopFloor floor) {

    static LineFloor released(Door door) {
        ShopFloor floor = ShopFloor.released(door);
        List.of("DARK", "CLOSER", "FRAMER").forEach(station -> floor.plant().station(station, "5"));
        floor.define("specification", "FLASH");
        floor.plant()
                .say(
                        "equipment",
                        "1 00:00",
                        Map.of("equipment", "RIG-1", "revision", "A", "name", "Flasher", "station", "DARK"));
        floor.serialised("MOD", "module", "M####");
        floor.serialised("PAN", "panel", "P####");
        floor.structure("MOD", "WAL", "S1");
        floor.structure("PAN", "MOD", "F1");
        floor.route(
                "REC",
                "B",
                ShopFloor.operation(
                        "bond",
                        "GLUE",
                        List.of("CELL", "TIM"),
                        "cures",
                        List.of("BAKE"),
                        "cautions",
                        List.of("chemical")),
                ShopFloor.operation(
                        "flash", "DARK", List.of(), "tests", List.of("FLASH"), "cautions", List.of("voltage")));
        floor.route("MOD", "A", ShopFloor.operation("close", "CLOSER", List.of("WAL")));
        floor.route("PAN", "A", ShopFloor.operation("frame", "FRAMER", List.of("MOD")));
        return new LineFloor(floor);
    }

    Plant plant() {
        return floor.plant();
    }

    /** Receivers that were born and bonded with cells and adhesive that were scanned. */
    LineFloor bonded(String... receivers) {
        plant().birth("08:00", "REC", receivers);
        return step("bond", "GLUE", Arrays.stream(receivers).map("REC "::concat).toList(), "CELL C-1", "TIM A-1");
    }

    LineFloor baked(String... receivers) {
        bonded(receivers).bake("B-" + receivers[0], receivers);
        return this;
    }

    void bake(String number, String... receivers) {
        Map<String, Object> run = new TreeMap<>(Map.of("run", number, "recipe", "BAKE", "equipment", "OVEN-7"));
        run.put(
                "units",
                Arrays.stream(receivers).map(one -> Plant.unit("REC " + one)).toList());
        run.put("startedAt", "2026-03-10T08:21:00+01:00");
        plant().say("cure-run", "08:25", run);
    }

    LineFloor flashed(String... receivers) {
        return step(
                "flash", "DARK", Arrays.stream(receivers).map("REC "::concat).toList());
    }

    /** Receivers that have been through their whole route. */
    LineFloor finished(String... receivers) {
        baked(receivers).flashed(receivers);
        for (String receiver : receivers) {
            Map<String, Object> run = Map.of("run", "F-" + receiver, "unit", Plant.unit("REC " + receiver));
            Map<String, Object> passed = new TreeMap<>(Map.of("specification", "FLASH", "equipment", "RIG-1"));
            passed.putAll(run);
            passed.put("verdict", "pass");
            plant().say("test-run", "08:30", passed);
        }
        return this;
    }

    /** A wall of which two receivers were made, fastened and not yet coated. */
    LineFloor wall(String wall, String one, String other) {
        finished(one, other).plant().birth("08:00", "WAL", wall);
        plant().install("08:40", "REC " + one, "WAL " + wall, "P1");
        plant().install("08:41", "REC " + other, "WAL " + wall, "P2");
        return step("fasten", "FLOOR", List.of("WAL " + wall), "FST N-1");
    }

    /** An operation that took in material, each written as its item and lot. */
    private LineFloor step(String operation, String station, List<String> units, String... uses) {
        Map<String, Object> body = new TreeMap<>(Map.of("operation", operation, "station", station));
        body.put("units", units.stream().map(Plant::unit).toList());
        body.put(
                "uses",
                Arrays.stream(uses)
                        .map(use -> use.split(" "))
                        .map(use -> Map.of("item", use[0], "lot", use[1]))
                        .toList());
        plant().say("step", "08:20", body);
        return this;
    }

    /** Syringes S-1 and S-2 of adhesive that may be open for eight hours and warm for two days. */
    LineFloor syringes() {
        Map<String, Object> item = new TreeMap<>(Map.of("item", "TIM", "revision", "B", "name", "Adhesive"));
        item.putAll(Map.of("tracking", "lot", "unitOfMeasure", "g", "openLife", 28_800, "outLife", 172_800));
        plant().say("item", "1 01:00", item);
        List<Map<String, String>> both = List.of(Map.of("label", "S-1"), Map.of("label", "S-2"));
        plant().say("container", "1 07:00", Map.of("lot", "A-1", "containers", both));
        return this;
    }

    LineFloor hold(String of, Object what) {
        plant().say("hold", "08:50", Map.of(of, List.of(what), "reason", "Supplier's notice"));
        return this;
    }
}
