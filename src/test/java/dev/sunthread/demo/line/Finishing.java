package dev.sunthread.demo.line;

import dev.sunthread.demo.supply.Crew;
import dev.sunthread.demo.supply.Loading;
import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.Notebook;
import java.time.OffsetDateTime;
import java.util.List;
import tools.jackson.databind.node.ObjectNode;

/** Solders receivers one by one and coats them a tray at a time. */
final class Finishing {

    private final Notebook notes;
    private final Loading loading;

    Finishing(Notebook notes, Loading loading) {
        this.notes = notes;
        this.loading = loading;
    }

    void finish(Tray tray) {
        for (int i = 0; i < Tray.SIZE; i++) {
            OffsetDateTime at = tray.solder().plusMinutes(2L * i).plusSeconds(notes.between(-15, 15));
            Crew.at(notes, "SOLDER-1", at)
                    .tell(at, "step", soldering(tray.receivers().get(i), at));
        }
        Crew.at(notes, "COAT-1", tray.coatEnd()).tell(tray.coatEnd(), "step", coating(tray));
    }

    private ObjectNode soldering(ObjectNode receiver, OffsetDateTime at) {
        ObjectNode step = Bodies.step("solder", "SOLDER-1", at.minusSeconds(45), List.of(receiver));
        step.set(
                "uses",
                Bodies.list(List.of(
                        loaded("SW-60", "SOLDER-1", "WIRE", at, "0.%d".formatted(notes.between(31, 38)), "g"),
                        loaded("FLX-2", "SOLDER-1", "FLUX", at, "0.2", "ml"))));
        step.set(
                "values",
                Bodies.list(List.of(
                        Bodies.value("soldering-temperature", "%d".formatted(notes.between(341, 349)), "degC"))));
        return step;
    }

    private ObjectNode coating(Tray tray) {
        ObjectNode step = Bodies.step("coat", "COAT-1", tray.coatStart(), tray.receivers());
        step.set("uses", Bodies.list(List.of(loaded("CC-8", "COAT-1", "POT", tray.coatStart(), "1.5", "ml"))));
        step.set(
                "values",
                Bodies.list(List.of(Bodies.value("coat-thickness", "%d".formatted(notes.between(38, 46)), "um"))));
        return step;
    }

    private ObjectNode loaded(
            String item, String station, String position, OffsetDateTime at, String quantity, String unitOfMeasure) {
        String lot = loading.lotAt(station, position, at);
        return Bodies.use(Bodies.use(item, lot, position), quantity, unitOfMeasure);
    }
}
