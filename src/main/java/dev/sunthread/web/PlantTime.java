package dev.sunthread.web;

import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import org.springframework.stereotype.Component;

/** Writes moments for people of the plant: to the second in the plant's zone, and exactly with their offset. */
@Component
public class PlantTime {

    private static final DateTimeFormatter SHOWN = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss");

    private final ZoneId zone;

    PlantTime(ZoneId zone) {
        this.zone = zone;
    }

    /** The moment as read in the plant, without its offset. */
    public String shown(OffsetDateTime at) {
        return SHOWN.format(at.atZoneSameInstant(zone));
    }

    /** The moment with the plant's offset then, in full. */
    public String exact(OffsetDateTime at) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(at.atZoneSameInstant(zone));
    }

    public ZoneId zone() {
        return zone;
    }
}
