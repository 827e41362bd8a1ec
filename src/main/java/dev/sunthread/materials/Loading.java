package dev.sunthread.materials;

import dev.sunthread.ledger.SoleWriter;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.Optional;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What is loaded at a position: state that follows the history of charges and discharges. */
@Repository
class Loading {

    private static final String LOADED = "loaded";

    private final SoleWriter sole;
    private final JdbcClient jdbc;

    Loading(SoleWriter sole, JdbcClient jdbc) {
        this.sole = sole;
        this.jdbc = jdbc;
    }

    /** Lets one writer at a time change what is loaded at a position. */
    void lock(long position) {
        jdbc.sql("SELECT id FROM catalog.position WHERE id = ? FOR UPDATE")
                .param(position)
                .query()
                .listOfRows();
    }

    /** What is loaded at a position at a time. */
    Optional<Loaded> loadedAt(long position, OffsetDateTime at) {
        Map<Long, Loaded> known = sole.known(LOADED);
        Loaded last = known.get(position);
        if (last != null && last.covers(at)) {
            return Optional.of(last);
        }
        Optional<Loaded> loaded = jdbc.sql("""
                        SELECT l.entry AS charge, l.lot, c.container, lower(l.during) AS since, upper(l.during) AS until
                        FROM materials.loaded l JOIN materials.charge c USING (entry)
                        WHERE l.position = ? AND l.during @> ?
                        """)
                .params(position, at)
                .query(DataClassRowMapper.newInstance(Loaded.class))
                .optional();
        loaded.ifPresent(found -> known.put(position, found));
        return loaded;
    }

    /** Brings the state of a position in line with its history. */
    void follow(long position) {
        sole.known(LOADED).remove(position);
        jdbc.sql("""
                        DELETE FROM materials.loaded l WHERE l.position = :position AND NOT EXISTS (
                          SELECT FROM materials.loading h
                          WHERE h.position = :position AND h.entry = l.entry AND h.during = l.during)
                        """).param("position", position).update();
        jdbc.sql("""
                        INSERT INTO materials.loaded (entry, position, lot, during)
                        SELECT h.entry, h.position, h.lot, h.during FROM materials.loading h
                        WHERE h.position = :position
                          AND NOT EXISTS (SELECT FROM materials.loaded l WHERE l.entry = h.entry)
                        """).param("position", position).update();
    }

    void followWithdrawn(String table, long entry) {
        jdbc.sql("SELECT position FROM materials." + table + " WHERE entry = ?")
                .param(entry)
                .query(Long.class)
                .list()
                .forEach(this::follow);
    }
}
