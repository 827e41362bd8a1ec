package dev.sunthread.demo.line;

import dev.sunthread.demo.told.Bodies;
import dev.sunthread.demo.told.Notebook;
import dev.sunthread.demo.told.PlantTime;
import dev.sunthread.ledger.EnvelopeHead;
import java.time.OffsetDateTime;
import tools.jackson.databind.node.ObjectNode;

/** The afternoon on which a wall station was out of reach, and what the server said of it by itself. */
final class Outage {

    private static final int DAY = 14;
    private static final String STATION = "WALL-2";
    private static final OffsetDateTime SINCE = PlantTime.at(DAY, "13:00");

    private final Notebook notes;

    Outage(Notebook notes) {
        this.notes = notes;
    }

    void tell() {
        notes.cutOff(STATION, SINCE, PlantTime.at(DAY, "17:20"));
        say(
                "station-behind",
                SINCE.plusMinutes(2),
                Bodies.of(
                        "station",
                        STATION,
                        "since",
                        PlantTime.written(SINCE),
                        "why",
                        "The page of op-24 is not heard, or still keeps scans"));
        say(
                "station-caught-up",
                PlantTime.at(DAY, "17:28"),
                Bodies.of("entry", "server-station-behind", "why", "Its page was heard again and keeps no scan"));
    }

    private void say(String kind, OffsetDateTime at, ObjectNode body) {
        EnvelopeHead head = new EnvelopeHead("server-" + kind, kind, 1, at, "sunthread", "sunthread");
        notes.add(head, body, at.plusSeconds(1));
    }
}
