package dev.sunthread.demo.supply;

import dev.sunthread.demo.floor.Floor;
import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.JournalWriter;
import dev.sunthread.demo.told.PlantTime;
import dev.sunthread.demo.told.Teller;
import dev.sunthread.simulator.world.Supply;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.Base64;
import java.util.List;
import java.util.Optional;

/** Takes lots into the store some days before they are needed, looks them over, and ends those that are used up. */
public final class Receipts {

    private static final int DAYS_AHEAD = 4;
    private static final int PLACES_AHEAD = 3;
    private static final String CRACKED = "G-46";

    private final Floor floor;
    private final Teller store;
    private final Teller incoming;

    public Receipts(Floor floor) {
        this.floor = floor;
        this.store = floor.store();
        this.incoming = floor.notes().teller("qe-03", "incoming");
    }

    public void tell() {
        int place = 0;
        for (Material material : Material.all()) {
            int lots = (PlantTime.WORKDAYS - 1 + PLACES_AHEAD) / material.every() + 2;
            for (int number = 0; number < lots; number++) {
                receive(material, number, place);
            }
            place++;
        }
    }

    private void receive(Material material, int number, int place) {
        int day = Math.max(number * material.every() - PLACES_AHEAD - DAYS_AHEAD, -6);
        OffsetDateTime at = PlantTime.at(Math.min(day, PlantTime.WORKDAYS - 1), "13:00")
                .plusMinutes(7L * place + number % 3)
                .minusHours(number == 0 ? 4 : 0);
        String lot = material.lot(number);
        int quantity = (int) Math.ceil(material.aDay() * material.every() * floor.traysADay() / 20.0) + 2;
        List<String> supplierLots = material.supplierLots(number);
        floor.happens(new Supply.Receipt(Floor.micros(at), lot, material.item(), supplierLots));
        store.tell(
                at,
                "receipt",
                "lot",
                lot,
                "item",
                material.item(),
                "quantity",
                String.valueOf(quantity),
                "unitOfMeasure",
                material.unitOfMeasure(),
                "supplier",
                material.supplier(),
                "supplierLots",
                supplierLots,
                "expiresAt",
                material.keeps() == 0 ? Optional.empty() : Optional.of(at.plusDays(material.keeps())));
        release(material, lot, at.plusHours(2));
        end(material, number);
    }

    private void release(Material material, String lot, OffsetDateTime at) {
        if (lot.equals(CRACKED)) {
            holdAndLookAgain(lot, at);
            return;
        }
        List<String> certificates = material.keeps() == 0 ? List.of() : List.of(certificate(material, lot, at));
        incoming.tell(
                at,
                "incoming-release",
                "lot",
                lot,
                "verdict",
                "released",
                "inspected",
                "Label and count compared with the order; packaging whole",
                "certificates",
                certificates);
    }

    private String certificate(Material material, String lot, OffsetDateTime at) {
        String text = "Certificate of " + material.supplier() + " for " + material.item() + ", delivered as " + lot
                + ": within the agreed limits.\n";
        String sha256 = JournalWriter.sha256Of(text);
        incoming.tell(
                at.minusMinutes(10),
                "attachment",
                "name",
                "certificate-" + lot + ".txt",
                "mediaType",
                "text/plain",
                "sha256",
                sha256,
                "content",
                Base64.getEncoder().encodeToString(text.getBytes(StandardCharsets.UTF_8)),
                "lot",
                lot);
        return sha256;
    }

    private void holdAndLookAgain(String lot, OffsetDateTime at) {
        String placed = floor.quality()
                .tell(
                        at,
                        "hold",
                        "lots",
                        List.of(lot),
                        "reason",
                        "Crate came in with a broken corner; panes wait for inspection");
        incoming.tell(
                at.plusHours(20),
                "incoming-release",
                "lot",
                lot,
                "verdict",
                "released",
                "inspected",
                "All panes looked at under raking light; no chips found");
        floor.quality()
                .tell(
                        at.plusHours(21),
                        "hold-release",
                        "entry",
                        placed,
                        "hold",
                        1,
                        "why",
                        "No chips found on any pane");
    }

    // adhesive is kept by the cartridge, and some is left in the freezer
    private void end(Material material, int number) {
        int lastDay = (number + 1) * material.every() + 2;
        if (lastDay < PlantTime.WORKDAYS && !material.item().equals("TIM-5")) {
            OffsetDateTime at = PlantTime.at(lastDay, "05:10").plusMinutes(number % 7);
            floor.happens(new Supply.Ending(Floor.micros(at), material.lot(number)));
            store.tell(at, "lot-ending", Bodies.of("lot", material.lot(number), "why", "used-up"));
        }
    }
}
