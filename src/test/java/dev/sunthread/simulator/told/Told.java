package dev.sunthread.simulator.told;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Map;

/** One thing as a plant records it: what an envelope needs. The time is in microseconds since 1970-01-01T00:00Z. */
public record Told(String id, String kind, long at, Map<String, Object> body) {

    public OffsetDateTime occurredAt() {
        return time(at);
    }

    static String written(long micros) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time(micros));
    }

    private static OffsetDateTime time(long micros) {
        return Instant.EPOCH.plus(micros, ChronoUnit.MICROS).atOffset(ZoneOffset.ofHours(1));
    }
}
