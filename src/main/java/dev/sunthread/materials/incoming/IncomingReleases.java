package dev.sunthread.materials.incoming;

import dev.sunthread.ledger.Known;
import java.util.List;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Incoming releases and rejections as known at a cut-off. */
@Repository
public class IncomingReleases {

    private final JdbcClient jdbc;

    IncomingReleases(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Those of a lot, the one that counts first. */
    public List<IncomingRelease> of(long lot, long cutoff) {
        return jdbc.sql("""
                        SELECT r.verdict, r.inspected, r.released_at AS at, e.actor, e.id AS entry
                        FROM materials.incoming_release r JOIN ledger.entry e ON e.number = r.entry
                        WHERE r.lot = :lot AND %s ORDER BY r.released_at DESC, r.entry DESC
                        """.formatted(Known.at("r.entry")))
                .param("lot", lot)
                .param("cutoff", cutoff)
                .query(DataClassRowMapper.newInstance(IncomingRelease.class))
                .list();
    }
}
