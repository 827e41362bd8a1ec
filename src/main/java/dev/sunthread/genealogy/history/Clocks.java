package dev.sunthread.genealogy.history;

import dev.sunthread.genealogy.history.UnprovenSpells.Spell;
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
 * How wrong the clock of each station may have been, by its revision in force at the time; within a spell of times that are
 * not proven, any of it. What names no station may have been told by any of them, so the least exact one counts.
 */
public final class Clocks {

    private record Revision(long station, long effective, long uncertainty) {}

    private static final String REVISIONS = """
            SELECT station, (extract(epoch FROM effective_at) * 1000000)::bigint AS effective,
              (clock_uncertainty * 1000000)::bigint AS uncertainty
            FROM catalog.station_revision r WHERE %s ORDER BY effective_at, r.entry
            """.formatted(Known.at("r.entry"));

    private static final String SPELLS = """
            SELECT x.station, (extract(epoch FROM greatest(x.since, timestamptz '0005-05-01')) * 1000000)::bigint AS since,
              (extract(epoch FROM x.until) * 1000000)::bigint AS until
            FROM quality.unproven_time x WHERE %s
            """.formatted(Known.at("x.entry"));

    private static final long EARLIEST = -62_000_000_000_000_000L;

    private final Map<Long, List<Revision>> revisions = new HashMap<>();
    private final UnprovenSpells spells;
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
        spells = new UnprovenSpells(jdbc.sql(SPELLS)
                .param("cutoff", cutoff)
                .query(DataClassRowMapper.newInstance(Spell.class))
                .list());
    }

    /** The moment that a station's clock told. */
    public Moment told(@Nullable Long station, long instant) {
        Moment clock = Moment.within(instant, uncertainty(station, instant));
        if (station == null) {
            return spells.at(clock).stream().map(this::anyOf).reduce(clock, Moment::spanning);
        }
        Spell spell = spells.at(station, instant);
        return spell == null ? clock : clock.spanning(anyOf(spell));
    }

    /**
     * From the early start to the late end of something that a station's clock told. What took its time in a spell of times
     * that are not proven is told from just before to just after it, so that whatever else is told in it may have been
     * meanwhile.
     */
    public Moment told(long station, long start, long end) {
        long beyond = start < end ? 1 : 0;
        return new Moment(
                told(station, start).early() - (isProven(station, start) ? 0 : beyond),
                told(station, end).late() + (isProven(station, end) ? 0 : beyond));
    }

    /** Whether the time that a station told lies in no spell of times that are not proven. */
    boolean isProven(long station, long instant) {
        return spells.at(station, instant) == null;
    }

    /** When something was that nobody told the station of: at the instant, or in the spells that this lies in. */
    public Moment proven(long instant) {
        return spells.at(Moment.at(instant)).stream().map(this::anyOf).reduce(Moment.at(instant), Moment::spanning);
    }

    // one moment for the whole spell, whatever revision of the station is in force in it
    private Moment anyOf(Spell spell) {
        long uncertainty = revisions.getOrDefault(spell.station(), List.of()).stream()
                .mapToLong(Revision::uncertainty)
                .max()
                .orElse(leastExact);
        return new Moment(spell.since(), spell.until()).widened(uncertainty);
    }

    /** By how much the least exact clock may be off. */
    public Duration worst() {
        return Duration.of(leastExact, ChronoUnit.MICROS);
    }

    /** A time told by any clock that is earlier than this one surely was before the instant. */
    public OffsetDateTime surelyBefore(long instant) {
        return time(told(null, Math.max(instant, EARLIEST)).early());
    }

    /** An instant as the database knows it, one without end as one that is far away. */
    public static OffsetDateTime time(long instant) {
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
