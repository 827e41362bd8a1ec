package dev.sunthread.demo.line;

import dev.sunthread.demo.supply.Crew;
import dev.sunthread.demo.supply.Loading;
import dev.sunthread.demo.supply.Plan;
import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.Notebook;
import dev.sunthread.demo.told.PlantTime;
import dev.sunthread.demo.told.Teller;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import tools.jackson.databind.node.ObjectNode;

/** Gives receivers their serials and bonds their cells: one station scans each cartridge, the other trusts its charge. */
final class Bonding {

    private static final String SCANNED_OLD_CARTRIDGE = "RC-0197";
    private static final String SCANNED_WRONG_CELL = "RC-0293";

    private static final Map<String, Plan> CELLS = Map.of(
            "BOND-1", Plan.of("5:C-101 10@06:50:C-103 13@06:50:C-105 19@06:50:C-106 25@06:50:C-108"),
            "BOND-2", Plan.of("5:C-102 11@06:50:C-104 16@06:50:C-103 23@06:50:C-107 27@06:50:C-106"));

    private static final Map<String, Plan> SPREADERS = Map.of(
            "BOND-1", Plan.of("5:H-21 12@06:50:H-22 20@06:50:H-23"),
            "BOND-2", Plan.of("5:H-21 16@06:50:H-22 24@06:50:H-24"));

    private final Notebook notes;
    private final Loading loading;

    Bonding(Notebook notes, Loading loading) {
        this.notes = notes;
        this.loading = loading;
    }

    void bond(Tray tray) {
        Teller operator = Crew.at(notes, tray.bonder(), tray.bond());
        operator.tell(tray.bond().minusMinutes(12), "birth", Bodies.birth(tray.receivers(), tray.bonder()));
        for (int i = 0; i < Tray.SIZE; i++) {
            OffsetDateTime at = tray.bond().plusMinutes(4L * i).plusSeconds(notes.between(-20, 20));
            bond(tray, i, operator, at);
        }
    }

    private void bond(Tray tray, int index, Teller operator, OffsetDateTime at) {
        String cell = of(CELLS, tray).at(at);
        if (!tray.serial(index).equals(SCANNED_WRONG_CELL)) {
            operator.tell(at, "step", step(tray, index, at, cell));
            return;
        }
        ObjectNode wrong = step(tray, index, at, "C-105");
        String id = operator.tell(at, "step", wrong);
        ObjectNode right = wrong.deepCopy();
        ((ObjectNode) right.get("uses").get(0)).put("lot", cell);
        ObjectNode correction = Bodies.of(
                "entry", id, "why", "An empty cell tray was scanned; the label of the full one was read again");
        correction.set("body", right);
        notes.teller("qe-02", "quality").tell(PlantTime.at(at.getDayOfMonth(), "15:20"), "correction", correction);
    }

    private ObjectNode step(Tray tray, int index, OffsetDateTime at, String cell) {
        String mass = "0.%03d".formatted(notes.between(171, 189));
        ObjectNode step = Bodies.step(
                "bond",
                tray.bonder(),
                at.minusSeconds(70),
                List.of(tray.receivers().get(index)));
        step.set(
                "uses",
                Bodies.list(List.of(
                        Bodies.use(Bodies.use("CELL-30", cell, null), "1", "pcs"),
                        Bodies.use(Bodies.use("HSP-12", of(SPREADERS, tray).at(at), null), "1", "pcs"),
                        Bodies.use(adhesive(tray, index, at), mass, "g"))));
        step.set(
                "values",
                Bodies.list(List.of(
                        Bodies.value("dispensed-mass", mass, "g"),
                        Bodies.value(
                                "placement-force", "%d.%d".formatted(notes.between(7, 8), notes.between(0, 9)), "N"))));
        return step;
    }

    private ObjectNode adhesive(Tray tray, int index, OffsetDateTime at) {
        String valve = index % 2 == 0 ? "V1" : "V2";
        if (tray.bonder().equals("BOND-2")) {
            return Bodies.use("TIM-5", null, valve);
        }
        String loaded = loading.lotAt("BOND-1", valve, at);
        return Bodies.use("TIM-5", tray.serial(index).equals(SCANNED_OLD_CARTRIDGE) ? "A-15" : loaded, valve);
    }

    private static Plan of(Map<String, Plan> plans, Tray tray) {
        return Objects.requireNonNull(plans.get(tray.bonder()));
    }
}
