package dev.sunthread.web;

import dev.sunthread.holds.Holds;
import dev.sunthread.inbox.Findings;
import dev.sunthread.inbox.Lines;
import java.util.List;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads the start page at a cut-off. */
@Repository
class StartPages {

    private static final int LATEST = 15;

    private final Findings findings;
    private final Lines lines;
    private final JdbcClient jdbc;

    StartPages(Findings findings, Lines lines, JdbcClient jdbc) {
        this.findings = findings;
        this.lines = lines;
        this.jdbc = jdbc;
    }

    StartPage read(long cutoff) {
        return new StartPage(findings.count(cutoff), lines.count(cutoff), openHolds(cutoff), latest(cutoff));
    }

    private long openHolds(long cutoff) {
        return jdbc.sql("SELECT count(*) FROM (" + Holds.KNOWN + ") open")
                .param("cutoff", cutoff)
                .query(Long.class)
                .single();
    }

    private List<Happening> latest(long cutoff) {
        return jdbc.sql("""
                        SELECT e.id, e.kind, e.occurred_at, e.recorded_at, e.actor, e.source
                        FROM ledger.position p JOIN ledger.entry e ON e.number = p.entry
                        WHERE p.position <= :cutoff ORDER BY p.position DESC LIMIT :most
                        """)
                .param("cutoff", cutoff)
                .param("most", LATEST)
                .query(DataClassRowMapper.newInstance(Happening.class))
                .list();
    }
}
