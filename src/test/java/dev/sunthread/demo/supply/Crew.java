package dev.sunthread.demo.supply;

import dev.sunthread.demo.told.Notebook;
import dev.sunthread.demo.told.Teller;
import java.time.OffsetDateTime;
import java.util.List;

/** Who stands at which station; two crews change by day. */
public final class Crew {

    private static final List<String> STATIONS = List.of(
            "BOND-1", "BOND-2", "SOLDER-1", "COAT-1", "OPTIC-1", "SEAL-1", "MIRROR-1", "GLASS-1", "FRAME-1", "PACK-1");

    private Crew() {}

    /** The operator at a station on a day. */
    public static Teller at(Notebook notes, String station, OffsetDateTime moment) {
        int place = STATIONS.indexOf(station);
        int mark = 1 + place + (moment.getDayOfMonth() % 2) * STATIONS.size();
        return notes.teller("op-%02d".formatted(mark), station);
    }
}
