package dev.sunthread.station;

import java.util.Map;
import java.util.stream.Stream;

/** What is scanned at a station that its material forbids. */
final class MaterialRefusals {

    private MaterialRefusals() {}

    static Stream<Refusal> all() {
        return Stream.of(
                Refusal.of(
                        "lot-is-received",
                        floor -> floor.plant()
                                .say("charge", "08:00", Map.of("lot", "X-9", "station", "GLUE", "position", "V1")),
                        "GLUE",
                        "X-9",
                        "Lot X-9 has no receipt",
                        "Record its receipt"),
                Refusal.of(
                        "lot-is-not-ended",
                        floor -> floor.plant().say("lot-ending", "08:00", Map.of("lot", "A-1", "why", "used-up")),
                        "GLUE",
                        "A-1",
                        "Nothing of lot A-1 was left",
                        "Find out which lot it was"),
                Refusal.of(
                        "lot-is-not-expired",
                        floor -> floor.plant()
                                .say(
                                        "receipt",
                                        "1 06:00",
                                        Map.of(
                                                "lot",
                                                "A-9",
                                                "item",
                                                "TIM",
                                                "quantity",
                                                "9",
                                                "unitOfMeasure",
                                                "g",
                                                "expiresAt",
                                                "2026-03-10T12:00:00+01:00")),
                        "GLUE",
                        "A-9",
                        "Lot A-9 had expired",
                        "Set it aside and ask quality"),
                Refusal.of(
                        "container-is-filled",
                        floor -> floor.plant().say("container-opening", "08:00", Map.of("container", "S-7")),
                        "GLUE",
                        "S-7",
                        "Nothing recorded is called S-7",
                        "Scan the label again"),
                Refusal.of(
                        "container-is-not-empty",
                        floor -> floor.syringes()
                                .plant()
                                .say("lot-ending", "08:00", Map.of("lot", "A-1", "container", "S-1", "why", "used-up")),
                        "GLUE",
                        "S-1",
                        "Nothing was left in container S-1",
                        "Find out which container it was"),
                Refusal.of(
                        "container-is-within-its-open-life",
                        floor -> floor.syringes().plant().say("container-opening", "08:00", Map.of("container", "S-1")),
                        "GLUE",
                        "S-1",
                        "may be used for 8 h 0 min",
                        "Take a fresh one"),
                Refusal.of(
                        "container-is-within-its-out-life",
                        floor -> floor.syringes()
                                .plant()
                                .say(
                                        "container-move",
                                        "08:00",
                                        Map.of("container", "S-1", "place", "Room", "storage", "room")),
                        "GLUE",
                        "V2 > S-1",
                        "was at room temperature",
                        "Take a fresh one"),
                Refusal.of(
                        "only-what-the-position-takes-is-loaded",
                        floor -> floor.floor().takes("GLUE", "V1", "TIM"),
                        "GLUE",
                        "V1 > C-1",
                        "Lot C-1 was loaded at position V1 of GLUE, which takes TIM",
                        "Load a lot of an item that the position takes"),
                Refusal.of(
                        "only-what-is-loaded-is-taken-off",
                        floor -> {},
                        "GLUE",
                        "V1 > .off",
                        "V1 is empty",
                        "Scan what is loaded at it"));
    }
}
