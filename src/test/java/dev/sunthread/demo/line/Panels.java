package dev.sunthread.demo.line;

import dev.sunthread.demo.floor.Floor;
import dev.sunthread.demo.floor.Piece;
import dev.sunthread.demo.supply.Loads;
import dev.sunthread.demo.supply.Stocks;
import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.PlantTime;
import dev.sunthread.simulator.world.Assembly;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Welds modules into panels, tests, packs and ships them; some come back and go out again. */
final class Panels {

    /** A panel and the modules in its positions. */
    record Panel(int number, List<Module> modules) {

        Piece piece() {
            return new Piece("PAN-400", "PN-%03d".formatted(number));
        }
    }

    private static final int SIZE = 16;
    private static final int MOST_A_DAY = 3;
    private static final List<String> CONSIGNEES = List.of(
            "Emberlow Test Field",
            "Quillmarsh Sun Field",
            "Thistledown Ridge Array",
            "Quillmarsh Sun Field",
            "Saltmere Pump Station");

    private final Floor floor;
    private final Modules modules;
    private final Operations operations;
    private final Loads loads;
    private final Rigs rigs;
    private final Map<Integer, Panel> built = new HashMap<>();
    private final List<Panel> packed = new ArrayList<>();
    private final Map<Integer, String> consignees = new HashMap<>();
    private int shipments;

    Panels(Floor floor, Modules modules, Operations operations, Loads loads) {
        this.floor = floor;
        this.modules = modules;
        this.operations = operations;
        this.loads = loads;
        this.rigs = new Rigs(floor, "TP");
    }

    /** Ships what was packed before and builds what the tested modules give. */
    void work(int day) {
        ship(day);
        comeBack(day);
        for (int i = 0; i < MOST_A_DAY && modules.waiting() >= SIZE; i++) {
            build(PlantTime.at(day, "07:30").plusMinutes(260L * i), day);
        }
    }

    private void build(OffsetDateTime start, int day) {
        Panel panel = new Panel(built.size() + 1, new ArrayList<>());
        built.put(panel.number(), panel);
        floor.happens(new Assembly.Birth(
                Floor.micros(start), panel.piece().serial(), panel.piece().serial(), "FRAME-1"));
        floor.crew("FRAME-1", start)
                .tell(start, "birth", "units", List.of(panel.piece().json()), "station", "FRAME-1");
        for (int position = 1; position <= SIZE; position++) {
            Module module = modules.take();
            install(panel, position, module, start.plusMinutes(3L + 4 * position));
            panel.modules().add(module);
        }
        finish(panel, start.plusMinutes(95), day);
    }

    private void install(Panel panel, int position, Module module, OffsetDateTime at) {
        floor.happens(new Assembly.Installation(
                Floor.micros(at),
                new Assembly.Child(module.piece().serial(), null),
                panel.piece().serial(),
                "P" + position,
                "FRAME-1"));
        floor.crew("FRAME-1", at)
                .tell(
                        at,
                        "installation",
                        Bodies.move(module.piece().json(), panel.piece().json(), "P" + position, "FRAME-1"));
    }

    private void finish(Panel panel, OffsetDateTime welded, int day) {
        operations.doAndTell(new Operations.Done(
                        "weld", "FRAME-1", welded.minusMinutes(25), welded, List.of(panel.piece()), false)
                .with(Stocks.take("FRM-5", day, "1"), loads.take("WLD-2", "FRAME-1", "WIRE", welded, "34"))
                .measured("weld-current", "%d".formatted(floor.notes().between(118, 126)), "A"));
        rigs.test(panel.piece(), "PAN-GND", "RIG-G1", welded.plusMinutes(25), true);
        pack(panel, welded.plusMinutes(60));
    }

    private void pack(Panel panel, OffsetDateTime at) {
        operations.doAndTell(
                new Operations.Done("pack", "PACK-1", at.minusMinutes(12), at, List.of(panel.piece()), false));
        packed.add(panel);
    }

    private void ship(int day) {
        if (packed.isEmpty()) {
            return;
        }
        String consignee = CONSIGNEES.get(shipments % CONSIGNEES.size());
        OffsetDateTime at = PlantTime.at(day, "06:50");
        String number = "SH-%04d".formatted(++shipments);
        packed.forEach(panel -> {
            consignees.put(panel.number(), consignee);
            floor.happens(new Assembly.Shipment(
                    Floor.micros(at), number, panel.piece().serial()));
        });
        floor.notes()
                .teller("lg-01", "dispatch")
                .tell(
                        at,
                        "shipment",
                        "shipment",
                        number,
                        "consignee",
                        consignee,
                        "units",
                        Piece.json(packed.stream().map(Panel::piece).toList()));
        packed.clear();
    }

    private void comeBack(int day) {
        if (day == 29) {
            takeBack(2, PlantTime.at(day, "12:10"));
        } else if (day == 31) {
            pack(Objects.requireNonNull(built.get(2)), PlantTime.at(day, "12:05"));
        } else if (day == 34) {
            takeBack(3, PlantTime.at(day, "12:20"));
        } else if (day == 35) {
            exchangeModule(Objects.requireNonNull(built.get(3)), PlantTime.at(day, "18:30"), day);
        }
    }

    private void takeBack(int number, OffsetDateTime at) {
        Panel panel = Objects.requireNonNull(built.get(number));
        floor.happens(new Assembly.Return(Floor.micros(at), panel.piece().serial()));
        floor.notes()
                .teller("lg-01", "dispatch")
                .tell(
                        at,
                        "return",
                        "consignee",
                        Objects.requireNonNull(consignees.get(number)),
                        "units",
                        List.of(panel.piece().json()));
    }

    /** A module with a scratched cover comes out of a returned panel and goes into another one later. */
    private void exchangeModule(Panel panel, OffsetDateTime at, int day) {
        Module out = panel.modules().get(1);
        floor.happens(new Assembly.Removal(
                Floor.micros(at),
                new Assembly.Child(out.piece().serial(), null),
                panel.piece().serial(),
                "P2",
                "FRAME-1"));
        floor.crew("FRAME-1", at)
                .tell(
                        at,
                        "removal",
                        Bodies.move(out.piece().json(), panel.piece().json(), "P2", "FRAME-1"));
        Module in = modules.take();
        install(panel, 2, in, at.plusMinutes(10));
        panel.modules().set(1, in);
        modules.putBack(out);
        finish(panel, at.plusMinutes(50), day);
    }
}
