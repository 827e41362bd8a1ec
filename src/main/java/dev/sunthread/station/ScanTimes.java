package dev.sunthread.station;

import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.EnvelopeHead;
import dev.sunthread.ledger.Manner;
import dev.sunthread.quality.UnprovenTimes;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import org.springframework.stereotype.Component;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Records what is proven of when something was scanned, where the clock of a device told it: before anything is recorded
 * of the scan and in its transaction, so that no trace takes that time for proven.
 */
@Component
class ScanTimes {

    private static final String SERVER = "sunthread";

    private final UnprovenTimes unproven;
    private final Door door;
    private final Clock clock;

    ScanTimes(UnprovenTimes unproven, Door door, Clock clock) {
        this.unproven = unproven;
        this.door = door;
        this.clock = clock;
    }

    /** Says it of one scan, unless that is recorded already or the station's clock counts as wrong by as much anyway. */
    void tell(String station, Scan scan) {
        Scan.Within within = scan.within();
        if (within != null && !isKnown(station, scan.at(), within)) {
            OffsetDateTime now = OffsetDateTime.now(clock);
            // those that the page kept with it are put behind it by less than a second
            OffsetDateTime to = within.to().truncatedTo(ChronoUnit.SECONDS).plusSeconds(1);
            OffsetDateTime said = to.isAfter(now) ? to : now;
            EnvelopeHead head = new EnvelopeHead(scan.id() + ".times", "unproven-times", 1, said, SERVER, SERVER);
            door.accept(Envelope.of(head, body(station, within, to)), Manner.TOLD);
        }
    }

    private boolean isKnown(String station, OffsetDateTime at, Scan.Within within) {
        boolean outside = within.isToldOutside();
        return unproven.isTold(station, within.from(), within.to(), outside)
                || !outside && unproven.isWithinTheClock(station, within.from(), within.to(), at);
    }

    private static ObjectNode body(String station, Scan.Within within, OffsetDateTime to) {
        ObjectNode body = JsonNodeFactory.instance.objectNode().put("station", station);
        if (within.from() != null) {
            body.put("from", written(within.from()));
        }
        return body.put("to", written(to))
                .put("told", written(within.told()))
                .put(
                        "why",
                        "A page kept a scan while the server was away; only the clock of its device tells when it was scanned");
    }

    private static String written(OffsetDateTime at) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(at);
    }
}
