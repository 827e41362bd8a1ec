package dev.sunthread.demo.told;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;

/** The plant's calendar: working days counted from 0 on Monday 14 September 2026, five to a week, in local time. */
public final class PlantTime {

    public static final int WORKDAYS = 50;
    private static final LocalDate FIRST = LocalDate.of(2026, 9, 14);
    private static final ZoneId ZONE = ZoneId.of("Europe/Madrid");
    private static final DateTimeFormatter WRITTEN = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ssxxx");

    private PlantTime() {}

    /** A working day and a time such as {@code 06:15}; days before the first count backwards through the calendar. */
    public static OffsetDateTime at(int workday, String time) {
        return on(date(workday), time);
    }

    public static OffsetDateTime on(LocalDate date, String time) {
        return date.atTime(LocalTime.parse(time)).atZone(ZONE).toOffsetDateTime();
    }

    public static LocalDate date(int workday) {
        return workday < 0
                ? FIRST.plusDays(workday)
                : FIRST.plusWeeks(workday / 5).plusDays(workday % 5);
    }

    /** The same moment with the offset that the plant's clocks have then. */
    public static OffsetDateTime local(OffsetDateTime moment) {
        return moment.atZoneSameInstant(ZONE).toOffsetDateTime();
    }

    /** A moment as bodies write it. */
    public static String written(OffsetDateTime moment) {
        return WRITTEN.format(local(moment));
    }
}
