package dev.sunthread.materials;

import java.time.OffsetDateTime;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What is loaded at a position: state that follows the history of charges and discharges. */
@Repository
class Loading {

    private final JdbcClient jdbc;

    Loading(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Lets one writer at a time change what is loaded at a position. */
    void lock(long position) {
        jdbc.sql("SELECT id FROM catalog.position WHERE id = ? FOR UPDATE")
                .param(position)
                .query()
                .listOfRows();
    }

    /** The lot loaded at a position at a time. */
    Optional<Long> loadedAt(long position, OffsetDateTime at) {
        return jdbc.sql("SELECT lot FROM materials.loaded WHERE position = ? AND during @> ?")
                .params(position, at)
                .query(Long.class)
                .optional();
    }

    /** Brings the state of a position in line with its history. */
    void follow(long position) {
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
