package dev.sunthread.catalog.judging;

import dev.sunthread.catalog.TermsHistory;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Known;
import java.sql.Types;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Finds the runs that a question selects, as known at a cut-off, each with the revision that judges it. */
final class Selection {

    private final Runs runs;
    private final TermsHistory<?> history;
    private final JdbcClient jdbc;

    Selection(Runs runs, TermsHistory<?> history, JdbcClient jdbc) {
        this.runs = runs;
        this.history = history;
        this.jdbc = jdbc;
    }

    /** @throws Refused if what is named is not released, or a named revision states nothing to judge by */
    List<Selected> of(Question question, long cutoff) {
        long thing = history.find(question.code())
                .filter(found -> isReleased(found, null, cutoff))
                .orElseThrow(() -> new Refused(
                        "There is no " + runs.thing() + " " + question.code(),
                        "Look for near matches with the search box"));
        return jdbc.sql("""
                        SELECT r.entry, k.checked, k.lit_before, k.lit_after, r.run, p.entry FROM %1$s
                        JOIN LATERAL (%2$s) p ON true JOIN catalog.%3$s_terms t ON t.entry = p.entry
                        WHERE r.%3$s = :thing AND %4$s
                          AND (:from::timestamptz IS NULL OR r.ended_at >= :from)
                          AND (:to::timestamptz IS NULL OR r.started_at <= :to)
                          AND (:equipment::text IS NULL
                            OR r.equipment = (SELECT q.id FROM catalog.equipment q WHERE q.code = :equipment))
                        ORDER BY r.entry
                        """.formatted(
                                runs.withChecks(Known.at("c.entry")), revision(), runs.thing(), Known.at("r.entry")))
                .param("thing", thing)
                .param("revision", named(thing, question.revision(), cutoff), Types.BIGINT)
                .param("from", question.from(), Types.TIMESTAMP_WITH_TIMEZONE)
                .param("to", question.to(), Types.TIMESTAMP_WITH_TIMEZONE)
                .param("equipment", question.equipment(), Types.VARCHAR)
                .param("cutoff", cutoff)
                .query((row, number) -> new Selected(
                        new Judge.Case(row.getLong(1), row.getLong(2), row.getLong(3), row.getLong(4)),
                        row.getLong(5),
                        row.getLong(6)))
                .list();
    }

    /** The named revision, or the one in force when a run began, as known at the cut-off. */
    private String revision() {
        return """
                SELECT q.entry FROM catalog.%1$s_revision q
                WHERE q.%1$s = r.%1$s AND CASE WHEN :revision::bigint IS NULL THEN q.effective_at <= r.started_at
                  ELSE q.entry = :revision END AND %2$s
                ORDER BY q.effective_at DESC, q.entry DESC LIMIT 1
                """.formatted(runs.thing(), Known.at("q.entry"));
    }

    private boolean isReleased(long thing, @Nullable String revision, long cutoff) {
        return !jdbc.sql("""
                        SELECT 1 FROM catalog.%1$s_revision q WHERE q.%1$s = :thing
                          AND (:revision::text IS NULL OR q.revision = :revision) AND %2$s LIMIT 1
                        """.formatted(runs.thing(), Known.at("q.entry")))
                .param("thing", thing)
                .param("revision", revision, Types.VARCHAR)
                .param("cutoff", cutoff)
                .query()
                .listOfRows()
                .isEmpty();
    }

    private @Nullable Long named(long thing, @Nullable String revision, long cutoff) {
        return revision == null
                ? null
                : history.of(thing, revision)
                        .filter(named -> isReleased(thing, revision, cutoff))
                        .orElseThrow(() -> new Refused(
                                "Revision " + revision + " states nothing to judge by, or is not released",
                                "Choose a revision that states limits"))
                        .entry();
    }
}
