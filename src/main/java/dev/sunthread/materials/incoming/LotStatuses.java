package dev.sunthread.materials.incoming;

import dev.sunthread.holds.Holds;
import dev.sunthread.ledger.Known;
import dev.sunthread.materials.Expiry;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** The status of lots, from history as known at a cut-off. */
@Service
public class LotStatuses {

    private record Found(boolean received, boolean made, boolean held, boolean ended) {}

    private final IncomingReleases releases;
    private final Expiry expiry;
    private final JdbcClient jdbc;

    LotStatuses(IncomingReleases releases, Expiry expiry, JdbcClient jdbc) {
        this.releases = releases;
        this.expiry = expiry;
        this.jdbc = jdbc;
    }

    /** All that is true of a lot at a time, by what was recorded up to the cut-off: its release first, then the rest. */
    public List<LotStatus> of(long lot, OffsetDateTime at, long cutoff) {
        Found found = find(lot, cutoff);
        List<LotStatus> statuses = new ArrayList<>();
        statuses.add(released(lot, found, cutoff));
        if (found.held()) {
            statuses.add(LotStatus.ON_HOLD);
        }
        if (expiry.at(lot, cutoff).filter(expires -> !at.isBefore(expires)).isPresent()) {
            statuses.add(LotStatus.EXPIRED);
        }
        if (found.ended()) {
            statuses.add(LotStatus.ENDED);
        }
        return statuses;
    }

    private LotStatus released(long lot, Found found, long cutoff) {
        return releases.of(lot, cutoff).stream()
                .findFirst()
                .map(release -> LotStatus.valueOf(release.verdict().name()))
                .orElse(
                        found.received()
                                ? LotStatus.WAITING_FOR_RELEASE
                                : found.made() ? LotStatus.MADE_HERE : LotStatus.UNKNOWN_ORIGIN);
    }

    private Found find(long lot, long cutoff) {
        return jdbc.sql("""
                        SELECT EXISTS (SELECT FROM materials.receipt r WHERE r.lot = :lot AND %s) AS received,
                          EXISTS (SELECT FROM materials.lot_making m WHERE m.lot = :lot AND %s) AS made,
                          EXISTS (SELECT FROM (%s) h WHERE h.kind = 'LOT' AND h.subject = :lot) AS held,
                          EXISTS (SELECT FROM materials.lot_ending n
                                  WHERE n.lot = :lot AND n.container IS NULL AND %s) AS ended
                        """.formatted(Known.at("r.entry"), Known.at("m.entry"), Holds.KNOWN, Known.at("n.entry")))
                .param("lot", lot)
                .param("cutoff", cutoff)
                .query(DataClassRowMapper.newInstance(Found.class))
                .single();
    }
}
