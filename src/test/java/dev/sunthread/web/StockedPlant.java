package dev.sunthread.web;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Plant;
import java.util.List;
import java.util.Map;

/** The small plant with containers, a blend, a release with its certificate, and counts. */
final class StockedPlant {

    /** FIPS 180-2, appendix B.1: the SHA-256 of "abc". */
    static final String ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

    private StockedPlant() {}

    static Plant built(Door door) {
        Plant plant = SmallPlant.built(door);
        plant.say(
                "attachment",
                "07:01",
                Map.of(
                        "name",
                        "paper <A-17>.html",
                        "mediaType",
                        "text/html",
                        "sha256",
                        ABC,
                        "content",
                        "YWJj",
                        "lot",
                        "A-17"));
        plant.say(
                "incoming-release",
                "07:02",
                Map.of("lot", "A-17", "verdict", "released", "inspected", "seal whole", "certificates", List.of(ABC)));
        fill(plant, "07:05", "A-17", "30");
        plant.say("container-move", "07:06", Map.of("container", "C/1", "place", "Freezer 2", "storage", "frozen"));
        plant.say("container-move", "08:00", Map.of("container", "C/1", "place", "BOND", "storage", "room"));
        plant.say("container-move", "09:30", Map.of("container", "C/1", "place", "Freezer 2", "storage", "frozen"));
        plant.say("container-opening", "08:01", Map.of("container", "C/1"));
        fill(plant, "10:00", "A-18", "10");
        var parts = List.of(
                Map.of("lot", "A-17", "container", "C/1", "quantity", "5", "unitOfMeasure", "g"),
                Map.of("lot", "A-18"));
        plant.say("blend", "10:10", Map.of("lot", "MIX-1", "item", "ADH", "way", "blend", "components", parts));
        plant.say("discharge", "10:20", Map.of("station", "BOND", "position", "V1", "lot", "A-17", "into", "REST-1"));
        plant.say(
                "count",
                "10:30",
                Map.of("lot", "A-17", "container", "C/1", "quantity", "33", "unitOfMeasure", "g", "place", "scale"));
        plant.say("lot-ending", "10:40", Map.of("lot", "A-18", "why", "used-up"));
        plant.say("container-opening", "10:50", Map.of("container", "C/404"));
        plant.say(
                "form-sheet",
                "10:55",
                Map.of("form", "charge", "station", "BOND", "records", List.of("7K3QM-22-V", "7K3QM-23-T")));
        return plant;
    }

    private static void fill(Plant plant, String time, String lot, String grams) {
        var filling = Map.of("label", "C/1", "quantity", grams, "unitOfMeasure", "g");
        plant.say("container", time, Map.of("lot", lot, "containers", List.of(filling)));
    }
}
