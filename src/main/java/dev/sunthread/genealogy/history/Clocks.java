package dev.sunthread.genealogy.history;

import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.ledger.Known;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * How wrong the clock of each station may have been, by its revision in force at the time. What names no station may
 * have been told by any of them, so the least exact one counts.
 */
public final class Clocks {

    private record Revision(long station, long effective, long uncertainty) {}

    private static final String REVISIONS = """
            SELECT station, (extract(epoch FROM effective_at) * 1000000)::bigint AS effective,
              (clock_uncertainty * 1000000)::bigint AS uncertainty
            FROM catalog.station_revision r WHERE %s ORDER BY effective_at, r.entry
            """.formatted(Known.at("r.entry"));

    private static final long EARLIEST = -62_000_000_000_000_000L;

    private final Map<Long, List<Revision>> revisions = new HashMap<>();
    private long leastExact;

    public Clocks(JdbcClient jdbc, long cutoff) {
        for (Revision revision : jdbc.sql(REVISIONS)
                .param("cutoff", cutoff)
                .query(DataClassRowMapper.newInstance(Revision.class))
                .list()) {
            revisions
                    .computeIfAbsent(revision.station(), any -> new ArrayList<>())
                    .add(revision);
            leastExact = Math.max(leastExact, revision.uncertainty());
        }
    }

    /** The moment that a station's clock told. */
    public Moment told(@Nullable Long station, long instant) {
        return Moment.within(instant, uncertainty(station, instant));
    }

    /** From the early start to the late end of something that a station's clock told. */
    public Moment told(long station, long start, long end) {
        return new Moment(told(station, start).early(), told(station, end).late());
    }

    /** By how much the least exact clock may be off. */
    public Duration worst() {
        return Duration.of(leastExact, ChronoUnit.MICROS);
    }

    /** A time told by any clock that is earlier than this one surely was before the instant. */
    public OffsetDateTime surelyBefore(long instant) {
        return time(Math.max(instant, EARLIEST) - leastExact);
    }

    /** An instant as the database knows it, one without end as one that is far away. */
    static OffsetDateTime time(long instant) {
        long within = Math.max(EARLIEST, Math.min(instant, 200_000_000_000_000_000L));
        return Instant.EPOCH.plus(within, ChronoUnit.MICROS).atOffset(ZoneOffset.UTC);
    }

    private long uncertainty(@Nullable Long station, long instant) {
        List<Revision> known = station == null ? List.of() : revisions.getOrDefault(station, List.of());
        return known.stream()
                .filter(revision -> revision.effective() <= instant)
                .reduce((earlier, later) -> later)
                .or(() -> known.stream().findFirst())
                .map(Revision::uncertainty)
                .orElse(leastExact);
    }
}
