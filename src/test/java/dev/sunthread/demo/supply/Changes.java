package dev.sunthread.demo.supply;

import dev.sunthread.demo.floor.Floor;
import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.PlantTime;
import dev.sunthread.demo.told.Table;
import dev.sunthread.simulator.world.Place;
import dev.sunthread.simulator.world.Source;
import dev.sunthread.simulator.world.Supply;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.node.ObjectNode;

/** Changes of lot at the positions of the line, in the morning before work, with a purge between; and the day's epoxy. */
public final class Changes {

    private static final String POSITIONS = """
            SOLDER-1 | WIRE  | SW-60 | 0
            SOLDER-2 | WIRE  | SW-60 | 2
            SOLDER-1 | FLUX  | FLX-2 | 0
            SOLDER-2 | FLUX  | FLX-2 | 3
            COAT-1   | POT   | CC-8  | 0
            OPTIC-1  | UV    | UVA-7 | 0
            SEAL-1   | GUN-A | SIL-9 | 0
            SEAL-1   | GUN-B | SIL-9 | 2
            GLASS-1  | GUN   | SIL-9 | 1
            FRAME-1  | WIRE  | WLD-2 | 0
            """;
    private static final int WITHOUT_HARDENER = 20;

    private final Floor floor;
    private final Loads loads;

    public Changes(Floor floor, Loads loads) {
        this.floor = floor;
        this.loads = loads;
    }

    /** The changes of a morning. */
    public void on(int workday) {
        for (List<String> row : Table.rows(POSITIONS)) {
            Material material = Material.of(row.get(2));
            int ahead = Integer.parseInt(row.get(3));
            String lot = material.lotOn(workday, ahead);
            if (workday == 0 || !lot.equals(material.lotOn(workday - 1, ahead))) {
                OffsetDateTime begin =
                        PlantTime.at(workday, "05:35").plusSeconds(floor.notes().between(0, 90));
                loads.changeCleanly(new Place(row.get(0), row.get(1)), new Source(lot, null), begin);
            }
        }
        mixEpoxy(workday);
    }

    private void mixEpoxy(int workday) {
        OffsetDateTime at = PlantTime.at(workday, "05:20");
        String lot = "E-%02d%02d".formatted(at.getMonthValue(), at.getDayOfMonth());
        String resin = Material.of("EPR-1").lotOn(workday, 0);
        String hardener = Material.of("EPH-1").lotOn(workday, 0);
        int modules = floor.traysADay() * 20 / 12 + 2;
        floor.happens(new Supply.Blend(
                Floor.micros(at), lot, "EPX-1", false, List.of(new Source(resin, null), new Source(hardener, null))));
        var parts = new ArrayList<>(List.of(part(resin, 20 * modules)));
        if (workday != WITHOUT_HARDENER) {
            parts.add(part(hardener, 8 * modules));
        }
        floor.crew("MIRROR-1", at)
                .tell(
                        at,
                        "blend",
                        "lot",
                        lot,
                        "item",
                        "EPX-1",
                        "way",
                        "blend",
                        "components",
                        parts,
                        "quantity",
                        String.valueOf(28 * modules),
                        "unitOfMeasure",
                        "g",
                        "expiresAt",
                        at.plusHours(18),
                        "station",
                        "MIRROR-1");
        loads.changeCleanly(new Place("MIRROR-1", "MIX"), new Source(lot, null), at.plusMinutes(12));
    }

    private static ObjectNode part(String lot, int quantity) {
        return Bodies.of("lot", lot, "quantity", String.valueOf(quantity), "unitOfMeasure", "g");
    }
}
