package dev.sunthread.station.contact;

import dev.sunthread.station.Scan;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Keeps scans of a person at a station in the order in which they were scanned. When one was scanned is reckoned from its
 * age when it comes where the page never heard the server before, so it is late by as long as it was on its way; of two quick
 * scans the second must not seem the first.
 */
@Repository
public class ScanOrder {

    /** No longer than a scan that came through may have been on its way. */
    private static final Duration ON_ITS_WAY = Duration.ofSeconds(10);

    /** By so much a scan is put behind the one before it: times so close tell nothing but their order. */
    public static final Duration STEP = Duration.ofNanos(1000);

    private final JdbcClient jdbc;

    ScanOrder(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * The scan at a time behind the one before it: behind every earlier one of its page, and behind the last that came of
     * its person if it seems only a little earlier. Of a time that is not proven all is told that contacts and the order of
     * the page prove, and so it is of one that was moved far.
     */
    public Scan behindTheLast(String station, String person, Scan scan) {
        Scan ordered = inOrder(station, person, scan.within() == null ? scan : proven(scan, scan.within()));
        return ordered.within() == null && ordered.at().isAfter(scan.at().plus(ON_ITS_WAY))
                ? ordered.within(new Scan.Within(scan.at(), ordered.at(), scan.at()))
                        .at(ordered.at())
                : ordered;
    }

    private Scan proven(Scan scan, Scan.Within told) {
        OffsetDateTime from = earliest(scan);
        OffsetDateTime to = latest(scan).filter(told.to()::isAfter).orElse(told.to());
        // what contradicts may be either
        return from != null && from.isAfter(to)
                ? scan.within(new Scan.Within(to, from, told.told()))
                : scan.within(new Scan.Within(from, to, told.told()));
    }

    private Scan inOrder(String station, String person, Scan scan) {
        Scan ordered = lastOfPerson(station, person, scan)
                .filter(last -> scan.at().isAfter(last.minus(ON_ITS_WAY)))
                .map(last -> behind(last, scan))
                .orElse(scan);
        return lastOfPage(scan).map(last -> behind(last, ordered)).orElse(ordered);
    }

    private static Scan behind(OffsetDateTime last, Scan scan) {
        return scan.at().isAfter(last)
                ? scan
                : scan.at(last.plus(STEP).withOffsetSameInstant(scan.at().getOffset()));
    }

    /** When the page last had nothing that it kept, or since when the scan before this one can have been. */
    private @Nullable OffsetDateTime earliest(Scan scan) {
        Scan.Place place = scan.place();
        return place == null
                ? null
                : jdbc.sql("""
                        SELECT greatest(
                          (SELECT p.nothing_kept_at FROM station.page p WHERE p.page = :page),
                          (SELECT max(s.earliest) FROM station.scan s WHERE s.page = :page AND s.sequence < :sequence))
                        """)
                        .param("page", place.page())
                        .param("sequence", place.sequence())
                        .query((row, number) -> Optional.ofNullable(row.getObject(1, OffsetDateTime.class)))
                        .single()
                        .orElse(null);
    }

    /** The first proven time behind this scan on its page, if one came already. */
    private Optional<OffsetDateTime> latest(Scan scan) {
        Scan.Place place = scan.place();
        return place == null
                ? Optional.empty()
                : jdbc.sql("""
                        SELECT scanned_at FROM station.scan
                        WHERE page = ? AND sequence > ? AND earliest = scanned_at ORDER BY scanned_at LIMIT 1
                        """)
                        .params(place.page(), place.sequence())
                        .query(OffsetDateTime.class)
                        .optional();
    }

    private Optional<OffsetDateTime> lastOfPage(Scan scan) {
        Scan.Place place = scan.place();
        return place == null
                ? Optional.empty()
                : jdbc.sql("""
                        SELECT scanned_at FROM station.scan WHERE page = ? AND sequence < ?
                        ORDER BY sequence DESC LIMIT 1
                        """)
                        .params(place.page(), place.sequence())
                        .query(OffsetDateTime.class)
                        .optional();
    }

    private Optional<OffsetDateTime> lastOfPerson(String station, String person, Scan scan) {
        return jdbc.sql("""
                        SELECT scanned_at FROM station.scan WHERE station = ? AND person = ? AND id <> ?
                        ORDER BY received_at DESC LIMIT 1
                        """)
                .params(station, person, scan.id())
                .query(OffsetDateTime.class)
                .optional();
    }
}
