package dev.sunthread.demo.told;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;

/** The plant's own time in March 2026: one hour ahead of UTC, and two from the change on the 29th on. */
public final class PlantTime {

    private static final LocalDateTime CHANGE = LocalDateTime.of(2026, 3, 29, 2, 0);

    private static final DateTimeFormatter WRITTEN = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx");

    private PlantTime() {}

    /** A day of March and a time such as {@code 06:15}. */
    public static OffsetDateTime at(int day, String time) {
        LocalDateTime local = LocalDateTime.of(2026, 3, day, 0, 0).with(LocalTime.parse(time));
        return local.atOffset(ZoneOffset.ofHours(local.isBefore(CHANGE) ? 1 : 2));
    }

    /** A moment as bodies write it. */
    public static String written(OffsetDateTime moment) {
        return WRITTEN.format(moment);
    }
}
