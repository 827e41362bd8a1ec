package dev.sunthread.quality;

import dev.sunthread.ledger.Known;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** The spells in which the times that a station told are not proven. */
@Service
public class UnprovenTimes {

    private static final String TOLD = """
            SELECT EXISTS (
              SELECT FROM quality.unproven_time x JOIN catalog.station s ON s.id = x.station
              WHERE s.code = :station AND x.since <= coalesce(cast(:from AS timestamptz), '-infinity') AND x.until >= :to AND %s
                AND (cast(:outside AS boolean) IS NOT TRUE OR x.told < x.since OR x.told > x.until))
            """.formatted(Known.now("x.entry"));

    private static final String CLOCK = """
            SELECT coalesce(min(r.clock_uncertainty), 0) >= extract(epoch FROM greatest(
              :to - cast(:at AS timestamptz), :at - coalesce(cast(:from AS timestamptz), '-infinity')))
            FROM catalog.station_revision r JOIN catalog.station s ON s.id = r.station WHERE s.code = :station
            """;

    private final JdbcClient jdbc;

    UnprovenTimes(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Whether a spell that covers this one is recorded of the station; with a finding if this one is to have one. */
    public boolean isTold(String station, @Nullable OffsetDateTime from, OffsetDateTime to, boolean outside) {
        return jdbc.sql(TOLD)
                .param("station", station)
                .param("from", from)
                .param("to", to)
                .param("outside", outside)
                .query(Boolean.class)
                .single();
    }

    /** Whether what the clock of the station counts as wrong covers a time of the spell to both of its ends anyway. */
    public boolean isWithinTheClock(
            String station, @Nullable OffsetDateTime from, OffsetDateTime to, OffsetDateTime at) {
        return from != null
                && jdbc.sql(CLOCK)
                        .param("station", station)
                        .param("from", from)
                        .param("to", to)
                        .param("at", at)
                        .query(Boolean.class)
                        .single();
    }
}
