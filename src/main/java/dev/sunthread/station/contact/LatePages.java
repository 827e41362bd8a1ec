package dev.sunthread.station.contact;

import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.EnvelopeHead;
import dev.sunthread.ledger.Manner;
import dev.sunthread.quality.StationBehind;
import dev.sunthread.quality.StationsBehind;
import dev.sunthread.station.contact.PageContacts.Late;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.UUID;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Records that a station is behind when a page there was not heard for a while, or still keeps scans, and that it caught
 * up when the page is heard again and keeps none. What a person said is for a person to end.
 */
@Component
public class LatePages {

    /** What the ledger calls the server where it speaks by itself. */
    static final String SERVER = "sunthread";

    private final PageContacts contacts;
    private final StationsBehind behind;
    private final Door door;
    private final Clock clock;
    private final Duration limit;

    LatePages(
            PageContacts contacts,
            StationsBehind behind,
            Door door,
            Clock clock,
            @Value("${sunthread.station.behind-after:2m}") Duration limit) {
        this.contacts = contacts;
        this.behind = behind;
        this.door = door;
        this.clock = clock;
        this.limit = limit;
    }

    /** Looks at every page once; any number of servers may, for the same thing said twice changes nothing. */
    @Scheduled(fixedDelayString = "${sunthread.station.look-every:15s}")
    public void look() {
        behind.now().stream().filter(this::hasCaughtUp).forEach(this::caughtUp);
        contacts.late(limit).forEach(this::isBehind);
    }

    private boolean hasCaughtUp(StationBehind known) {
        return known.page() != null && contacts.hasCaughtUpSince(known.page(), known.since());
    }

    private void isBehind(Late late) {
        ObjectNode body = JsonNodeFactory.instance.objectNode();
        body.put("station", late.station());
        body.put("since", DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(late.caughtUpAt()));
        body.put("page", late.page().toString());
        body.put("why", "The page of " + late.person() + " is not heard, or still keeps scans");
        say("station-behind", late.page() + " " + late.caughtUpAt().toInstant(), body);
    }

    private void caughtUp(StationBehind known) {
        ObjectNode body = JsonNodeFactory.instance.objectNode();
        body.put("entry", known.entry());
        body.put("why", "Its page was heard again and keeps no scan");
        say("station-caught-up", known.entry(), body);
    }

    private void say(String kind, String what, ObjectNode body) {
        String id = UUID.nameUUIDFromBytes((kind + " " + what).getBytes(StandardCharsets.UTF_8))
                .toString();
        door.accept(
                Envelope.of(new EnvelopeHead(id, kind, 1, OffsetDateTime.now(clock), SERVER, SERVER), body),
                Manner.TOLD);
    }
}
