package dev.sunthread.web.station;

import dev.sunthread.ledger.Known;
import dev.sunthread.web.Paged;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads the steps that were done at a station, or with material from one of its positions, the newest first. */
@Repository
class Steps {

    private static final int A_PAGE = 50;
    private static final String AT_STATION = "FROM production.step s, LATERAL (SELECT NULL::bigint AS lot) u"
            + " WHERE s.station = :id AND " + Known.at("s.entry");
    private static final String FROM_POSITION = "FROM production.step_use u JOIN production.step s USING (entry)"
            + " WHERE u.position = :id AND " + Known.at("s.entry");

    private final JdbcClient jdbc;

    Steps(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Paged<StationPage.Step> atStation(long station, @Nullable Integer page, long cutoff) {
        return page(AT_STATION, station, page, cutoff);
    }

    Paged<StationPage.Step> fromPosition(long position, @Nullable Integer page, long cutoff) {
        return page(FROM_POSITION, position, page, cutoff);
    }

    List<StationPage.Step> allAtStation(long station, long cutoff) {
        return read(AT_STATION, station, cutoff, 0, Integer.MAX_VALUE);
    }

    List<StationPage.Step> allFromPosition(long position, long cutoff) {
        return read(FROM_POSITION, position, cutoff, 0, Integer.MAX_VALUE);
    }

    private Paged<StationPage.Step> page(String which, long id, @Nullable Integer page, long cutoff) {
        long total = jdbc.sql("SELECT count(*) " + which)
                .param("id", id)
                .param("cutoff", cutoff)
                .query(Long.class)
                .single();
        return Paged.of(page, A_PAGE, total, (offset, most) -> read(which, id, cutoff, offset, most));
    }

    private List<StationPage.Step> read(String which, long id, long cutoff, long offset, int most) {
        return jdbc.sql("""
                        SELECT x.started_at AS "from", x.ended_at AS until, x.operation, n.units, i.number AS item, un.serial,
                               un.issuer, l.number AS lot, e.actor, e.id AS entry
                        FROM (SELECT s.entry, s.started_at, s.ended_at, s.operation, u.lot %s
                              ORDER BY s.started_at DESC, s.entry DESC LIMIT :most OFFSET :offset) x
                        JOIN ledger.entry e ON e.number = x.entry
                        CROSS JOIN LATERAL (SELECT count(*) AS units, min(m.unit) AS one FROM production.step_unit m
                                            WHERE m.entry = x.entry) n
                        LEFT JOIN production.unit un ON un.id = n.one LEFT JOIN catalog.item i ON i.id = un.item
                        LEFT JOIN materials.lot l ON l.id = x.lot
                        ORDER BY x.started_at DESC, x.entry DESC
                        """.formatted(which))
                .param("id", id)
                .param("cutoff", cutoff)
                .param("offset", offset)
                .param("most", most)
                .query(DataClassRowMapper.newInstance(StationPage.Step.class))
                .list();
    }
}
