package dev.sunthread.catalog;

import dev.sunthread.ledger.body.Unreadable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Sees to it that a revision is released once. */
@Component
class Revisions {

    private final JdbcClient jdbc;

    Revisions(JdbcClient jdbc) {
        this.jdbc = jdbc;
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
