package dev.sunthread.demo.line;

import dev.sunthread.demo.floor.Floor;
import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.JournalWriter;
import dev.sunthread.ledger.Envelope;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.util.List;
import tools.jackson.databind.node.ObjectNode;

/** A line of a hand-held scanner that read a nought of the item number as a letter, as the inbox keeps it. */
final class MisreadScan {

    private static final String MISREAD = "WAL-2O0";

    private final Floor floor;

    MisreadScan(Floor floor) {
        this.floor = floor;
    }

    /** Keeps a step that happened at a time, told with the item misread and taken in some hours later. */
    void keep(OffsetDateTime at, ObjectNode step) {
        ObjectNode unit = (ObjectNode) step.get("units").get(0);
        unit.put("item", MISREAD);
        Envelope said = Envelope.of(floor.notes().teller("op-05", "handheld-2").head(at, "step"), step);
        byte[] bytes = said.canonical().getBytes(StandardCharsets.UTF_8);
        floor.notes()
                .teller("it-01", "journal")
                .tell(
                        at.plusHours(5),
                        "kept-line",
                        "file",
                        "handheld-2.ndjson",
                        "lineNumber",
                        14,
                        "length",
                        bytes.length,
                        "sha256",
                        JournalWriter.sha256Of(said.canonical()),
                        "text",
                        said.canonical(),
                        "problems",
                        List.of(problem()),
                        "names",
                        List.of(
                                name("unit", unit.get("serial").asString()),
                                name("lot", lot(step, 0)),
                                name("lot", lot(step, 1)),
                                name("lot", lot(step, 2)),
                                name("position", "UV")));
    }

    private static String lot(ObjectNode step, int use) {
        return step.get("uses").get(use).get("lot").asString();
    }

    private static ObjectNode problem() {
        return Bodies.of(
                "field",
                "body.units[0].item",
                "reason",
                "names item \"" + MISREAD + "\", which is not released",
                "remedy",
                "Release the item first or correct its number");
    }

    private static ObjectNode name(String kind, String name) {
        return Bodies.of("kind", kind, "name", name);
    }
}
