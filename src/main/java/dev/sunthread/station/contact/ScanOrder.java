package dev.sunthread.station.contact;

import dev.sunthread.station.Scan;
import java.time.Duration;
import java.time.OffsetDateTime;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Keeps scans of a person at a station in the order in which they were scanned. When one was scanned is reckoned from its
 * age when it comes, so it is late by as long as it was on its way; of two quick scans the second must not seem the first.
 */
@Repository
public class ScanOrder {

    /** No longer than a scan that came through may have been on its way. */
    private static final Duration ON_ITS_WAY = Duration.ofSeconds(10);

    private final JdbcClient jdbc;

    ScanOrder(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The time of a scan, behind the one that came before it if it seems a little earlier. */
    public Scan behindTheLast(String station, String person, Scan scan) {
        return jdbc.sql("""
                        SELECT scanned_at FROM station.scan WHERE station = ? AND person = ? AND id <> ?
                        ORDER BY received_at DESC LIMIT 1
                        """)
                .params(station, person, scan.id())
                .query(OffsetDateTime.class)
                .optional()
                .filter(last -> !scan.at().isAfter(last) && scan.at().isAfter(last.minus(ON_ITS_WAY)))
                .map(last -> new Scan(
                        scan.id(),
                        scan.text(),
                        last.plusNanos(1000).withOffsetSameInstant(scan.at().getOffset()),
                        scan.kept()))
                .orElse(scan);
    }
}
