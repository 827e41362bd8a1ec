package dev.sunthread.catalog;

import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Remembered;
import dev.sunthread.ledger.body.Unreadable;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Released recipes, specifications, equipment and faults, each by its code. */
@Repository
public class ReleasedCodes {

    private final Revisions revisions;
    private final Remembered remembered;
    private final JdbcClient jdbc;

    ReleasedCodes(Revisions revisions, Remembered remembered, JdbcClient jdbc) {
        this.revisions = revisions;
        this.remembered = remembered;
        this.jdbc = jdbc;
    }

    /** The internal number of the recipe that a body names. @throws Unreadable if it was never released */
    public long recipe(String code, String field) {
        return named("recipe", code, field);
    }

    /** The internal number of the specification that a body names. @throws Unreadable if it was never released */
    public long specification(String code, String field) {
        return named("specification", code, field);
    }

    /** The internal number of the equipment that a body names. @throws Unreadable if it was never released */
    public long equipment(String code, String field) {
        return named("equipment", code, field);
    }

    private long named(String thing, String code, String field) {
        return remembered
                .<String, Long>of(thing)
                .computeIfAbsent(
                        code,
                        asked -> find(thing, asked)
                                .orElseThrow(() -> Unreadable.at(
                                        field,
                                        "names " + thing + " \"" + asked + "\", which is not released",
                                        "Release the " + thing + " first or correct its code")));
    }

    private Optional<Long> find(String thing, String code) {
        return jdbc.sql("SELECT id FROM catalog." + thing + " WHERE code = ?")
                .param(code)
                .query(Long.class)
                .optional();
    }

    /** The internal number of a code whose revision is released now. @throws Unreadable if that revision was before */
    long register(String thing, String code, String revision) {
        jdbc.sql("INSERT INTO catalog." + thing + " (code) VALUES (?) ON CONFLICT (code) DO NOTHING")
                .param(code)
                .update();
        long id = find(thing, code).orElseThrow();
        revisions.revisionIsReleasedOnce(thing + "_revision", thing, id, revision);
        return id;
    }

    /** Releases a revision of what has a code and a name. */
    void release(Fact<?> fact, String thing, String code, String revision, String name) {
        long id = register(thing, code, revision);
        jdbc.sql("INSERT INTO catalog.%1$s_revision (entry, %1$s, revision, name, effective_at) VALUES (?, ?, ?, ?, ?)"
                        .formatted(thing))
                .params(fact.entry(), id, revision, name, fact.occurredAt())
                .update();
    }
}
