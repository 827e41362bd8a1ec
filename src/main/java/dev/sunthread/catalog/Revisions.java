package dev.sunthread.catalog;

import dev.sunthread.ledger.Remembered;
import dev.sunthread.ledger.body.Unreadable;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Sees to it that a revision is released once. */
@Component
class Revisions {

    /** The entry that releases a revision, and from when on it is in force. */
    private record Revision(long entry, OffsetDateTime effectiveAt) {}

    private final Remembered remembered;
    private final JdbcClient jdbc;

    Revisions(Remembered remembered, JdbcClient jdbc) {
        this.remembered = remembered;
        this.jdbc = jdbc;
    }

    /** The entry that released the revision of an item's structure or route in force at a time; empty if none was. */
    Optional<Long> inForce(String table, long item, OffsetDateTime at) {
        return inForce(table, "item", item, at);
    }

    /** The same of a thing that the table names in another column. */
    Optional<Long> inForce(String table, String column, long id, OffsetDateTime at) {
        return released(table, column, id).stream()
                .filter(revision -> !revision.effectiveAt().isAfter(at))
                .findFirst()
                .map(Revision::entry);
    }

    /** All revisions of a thing, the last to be in force first; looked up once per transaction. */
    private List<Revision> released(String table, String column, long id) {
        return remembered
                .<Long, List<Revision>>of(table)
                .computeIfAbsent(
                        id,
                        asked -> jdbc.sql("SELECT entry, effective_at FROM catalog." + table + " WHERE " + column
                                        + " = ? ORDER BY effective_at DESC, entry DESC")
                                .param(asked)
                                .query(DataClassRowMapper.newInstance(Revision.class))
                                .list());
    }

    /** Says that a revision of a station, or of an item's structure or route, is released by what is being recorded. */
    void changed(String table) {
        remembered.of(table).clear();
    }

    /** @throws Unreadable if the thing has that revision already */
    void revisionIsReleasedOnce(String table, String column, long id, String revision) {
        boolean released = jdbc.sql("SELECT 1 FROM catalog." + table + " WHERE " + column + " = ? AND revision = ?")
                .params(id, revision)
                .query(Integer.class)
                .optional()
                .isPresent();
        if (released) {
            throw Unreadable.at(
                    "body.revision",
                    "revision \"" + revision + "\" is released already and is never changed",
                    "Release the change under a next revision");
        }
    }
}
