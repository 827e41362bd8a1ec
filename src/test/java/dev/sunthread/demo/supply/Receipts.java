package dev.sunthread.demo.supply;

import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.Notebook;
import dev.sunthread.demo.told.PlantTime;
import dev.sunthread.demo.told.Table;
import dev.sunthread.demo.told.Teller;
import java.util.List;
import tools.jackson.databind.node.ObjectNode;

/** Takes lots into the store, two of them behind a hold for inspection. */
public final class Receipts {

    private static final String LOTS = """
            3  | CELL-30 | C-101 | 110 pcs  | Lumenfeld Cells    | LF-7736
            3  | CELL-30 | C-102 | 110 pcs  | Lumenfeld Cells    | LF-7736,LF-7738
            4  | CELL-30 | C-103 | 110 pcs  | Lumenfeld Cells    | LF-7740,LF-7741
            9  | CELL-30 | C-104 | 60 pcs   | Lumenfeld Cells    | LF-7740,LF-7744
            9  | CELL-30 | C-105 | 60 pcs   | Lumenfeld Cells    | LF-7741
            16 | CELL-30 | C-106 | 110 pcs  | Lumenfeld Cells    | LF-7744,LF-7749
            16 | CELL-30 | C-107 | 60 pcs   | Lumenfeld Cells    | LF-7741,LF-7752
            23 | CELL-30 | C-108 | 110 pcs  | Lumenfeld Cells    | LF-7752
            3  | HSP-12  | H-21  | 230 pcs  | Tindermark Metals  | TM-118
            9  | HSP-12  | H-22  | 230 pcs  | Tindermark Metals  | TM-118,TM-121
            17 | HSP-12  | H-23  | 110 pcs  | Tindermark Metals  | TM-121
            17 | HSP-12  | H-24  | 110 pcs  | Tindermark Metals  | TM-125
            3  | TIM-5   | A-11  | 60 g     | Mossgate Bonding   | MB-2201
            3  | TIM-5   | A-12  | 60 g     | Mossgate Bonding   | MB-2201
            4  | TIM-5   | A-13  | 60 g     | Mossgate Bonding   | MB-2202
            4  | TIM-5   | A-14  | 60 g     | Mossgate Bonding   | MB-2202
            9  | TIM-5   | A-15  | 60 g     | Mossgate Bonding   | MB-2205
            9  | TIM-5   | A-16  | 60 g     | Mossgate Bonding   | MB-2205
            9  | TIM-5   | A-17  | 60 g     | Mossgate Bonding   | MB-2209
            11 | TIM-5   | A-18  | 60 g     | Mossgate Bonding   | MB-2210
            11 | TIM-5   | A-19  | 60 g     | Mossgate Bonding   | MB-2210
            16 | TIM-5   | A-20  | 60 g     | Mossgate Bonding   | MB-2213
            20 | TIM-5   | A-21  | 60 g     | Mossgate Bonding   | MB-2213
            20 | TIM-5   | A-22  | 60 g     | Mossgate Bonding   | MB-2216
            3  | SW-60   | W-31  | 500 g    | Tindermark Metals  | TM-902
            12 | SW-60   | W-32  | 500 g    | Tindermark Metals  | TM-902
            23 | SW-60   | W-33  | 500 g    | Tindermark Metals  | TM-907
            3  | FLX-2   | F-41  | 250 ml   | Mossgate Bonding   | MB-0417
            10 | FLX-2   | F-42  | 250 ml   | Mossgate Bonding   | MB-0417
            20 | FLX-2   | F-43  | 250 ml   | Mossgate Bonding   | MB-0423
            3  | CC-8    | K-51  | 400 ml   | Fernhollow Coats   | FH-61
            10 | CC-8    | K-52  | 400 ml   | Fernhollow Coats   | FH-61
            16 | CC-8    | K-53  | 400 ml   | Fernhollow Coats   | FH-64
            23 | CC-8    | K-54  | 400 ml   | Fernhollow Coats   | FH-66
            3  | SHD-3   | S-91  | 230 pcs  | Tindermark Metals  | TM-330
            12 | SHD-3   | S-92  | 230 pcs  | Tindermark Metals  | TM-331
            23 | SHD-3   | S-93  | 230 pcs  | Tindermark Metals  | TM-331
            3  | SOE-14  | O-11  | 120 pcs  | Brindlewick Optics | BW-5501
            9  | SOE-14  | O-12  | 160 pcs  | Brindlewick Optics | BW-5501,BW-5504
            16 | SOE-14  | O-13  | 160 pcs  | Brindlewick Optics | BW-5504
            23 | SOE-14  | O-14  | 120 pcs  | Brindlewick Optics | BW-5510
            3  | UVA-7   | U-61  | 50 ml    | Mossgate Bonding   | MB-3310
            10 | UVA-7   | U-62  | 50 ml    | Mossgate Bonding   | MB-3312
            20 | UVA-7   | U-63  | 50 ml    | Mossgate Bonding   | MB-3312
            4  | SIL-9   | Q-71  | 5000 g   | Fernhollow Coats   | FH-802
            4  | SIL-9   | Q-72  | 5000 g   | Fernhollow Coats   | FH-803
            12 | SIL-9   | Q-73  | 5000 g   | Fernhollow Coats   | FH-803
            16 | SIL-9   | Q-74  | 5000 g   | Fernhollow Coats   | FH-806
            23 | SIL-9   | Q-75  | 5000 g   | Fernhollow Coats   | FH-809
            4  | CHS-4   | X-81  | 20 pcs   | Tindermark Metals  | TM-411
            18 | CHS-4   | X-82  | 20 pcs   | Tindermark Metals  | TM-415
            4  | MIR-6   | M-31  | 50 pcs   | Oakrune Glass      | OR-77
            12 | MIR-6   | M-32  | 80 pcs   | Oakrune Glass      | OR-77,OR-79
            20 | MIR-6   | M-33  | 50 pcs   | Oakrune Glass      | OR-80
            4  | EPX-1   | E-85  | 2000 g   | Mossgate Bonding   | MB-4001
            16 | EPX-1   | E-86  | 2000 g   | Mossgate Bonding   | MB-4004
            4  | GLS-2   | G-41  | 24 pcs   | Oakrune Glass      | OR-210
            16 | GLS-2   | G-42  | 24 pcs   | Oakrune Glass      | OR-214
            4  | FRM-5   | R-51  | 5 pcs    | Tindermark Metals  | TM-650
            18 | FRM-5   | R-52  | 6 pcs    | Tindermark Metals  | TM-652
            """;

    private final Teller store;
    private final Teller quality;

    public Receipts(Notebook notes) {
        store = notes.teller("wh-01", "store");
        quality = notes.teller("qe-02", "quality");
    }

    public void tell() {
        int minute = 0;
        for (List<String> row : Table.rows(LOTS)) {
            int day = Integer.parseInt(row.get(0));
            String time = "%02d:%02d".formatted(13 + minute / 60, minute++ % 60);
            store.tell(PlantTime.at(day, time), "receipt", receipt(row));
        }
        glassWaitsForInspection();
    }

    private static ObjectNode receipt(List<String> row) {
        String[] quantity = row.get(3).split(" ");
        ObjectNode body = Bodies.of("lot", row.get(2), "item", row.get(1), "quantity", quantity[0]);
        body.put("unitOfMeasure", quantity[1]).put("supplier", row.get(4));
        body.set("supplierLots", Bodies.texts(Table.members(row.get(5))));
        if (row.get(1).equals("TIM-5")) {
            body.put("expiresAt", "2026-06-30T23:59:59+02:00");
        }
        return body;
    }

    private void glassWaitsForInspection() {
        ObjectNode hold = Bodies.of();
        hold.set("lots", Bodies.texts(List.of("G-42")));
        hold.put("reason", "Crate came in with a broken corner; panes wait for inspection");
        String placed = quality.tell(PlantTime.at(16, "15:05"), "hold", hold);
        ObjectNode release = Bodies.of("entry", placed).put("hold", 1);
        release.put("why", "All panes looked at under raking light; no chips found");
        quality.tell(PlantTime.at(17, "14:40"), "hold-release", release);
    }
}
