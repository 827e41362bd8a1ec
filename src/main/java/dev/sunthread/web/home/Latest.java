package dev.sunthread.web.home;

import java.util.List;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads the entries that were recorded last. */
@Repository
class Latest {

    private static final int MOST = 10;

    private final JdbcClient jdbc;

    Latest(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<Happening> at(long cutoff) {
        return jdbc.sql("""
                        SELECT e.id, e.kind, e.occurred_at, e.recorded_at, e.actor, e.source
                        FROM ledger.position p JOIN ledger.entry e ON e.number = p.entry
                        WHERE p.position <= :cutoff ORDER BY p.position DESC LIMIT :most
                        """)
                .param("cutoff", cutoff)
                .param("most", MOST)
                .query(DataClassRowMapper.newInstance(Happening.class))
                .list();
    }
}
