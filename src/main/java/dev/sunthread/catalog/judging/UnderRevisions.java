package dev.sunthread.catalog.judging;

import dev.sunthread.catalog.TermsHistory;
import dev.sunthread.ledger.Known;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import org.springframework.jdbc.core.simple.JdbcClient;

/** One run under every revision of what it was done under, as known at a cut-off. */
final class UnderRevisions<T> {

    private final Runs runs;
    private final TermsHistory<T> history;
    private final BiFunction<Collection<Judge.Case>, T, Map<Judge.Case, Judged>> judge;
    private final JdbcClient jdbc;

    UnderRevisions(
            Runs runs,
            TermsHistory<T> history,
            BiFunction<Collection<Judge.Case>, T, Map<Judge.Case, Judged>> judge,
            JdbcClient jdbc) {
        this.runs = runs;
        this.history = history;
        this.judge = judge;
        this.jdbc = jdbc;
    }

    /** The last to be in force first. */
    List<Under> of(long entry, long cutoff) {
        Judge.Case run = atCutoff(entry, cutoff);
        return jdbc.sql("""
                        SELECT p.entry, p.revision, p.entry = (
                          SELECT q.entry FROM catalog.%1$s_revision q
                          WHERE q.%1$s = r.%1$s AND q.effective_at <= r.started_at AND %2$s
                          ORDER BY q.effective_at DESC, q.entry DESC LIMIT 1) AS in_force
                        FROM %3$s.run_record r JOIN catalog.%1$s_revision p ON p.%1$s = r.%1$s
                        JOIN catalog.%1$s_terms t ON t.entry = p.entry
                        WHERE r.entry = :entry AND %4$s ORDER BY p.effective_at DESC, p.entry DESC
                        """.formatted(runs.thing(), Known.at("q.entry"), runs.schema(), Known.at("p.entry")))
                .param("entry", entry)
                .param("cutoff", cutoff)
                .query((row, number) ->
                        new Under(row.getString(2), row.getBoolean(3), judged(run, history.terms(row.getLong(1)))))
                .list();
    }

    private Judged judged(Judge.Case run, T terms) {
        Judged judged = judge.apply(List.of(run), terms).get(run);
        if (judged == null) {
            throw new IllegalStateException("nothing came out for entry " + run.entry());
        }
        return judged;
    }

    /** The run with the checks that say something of it, as known at a cut-off. */
    private Judge.Case atCutoff(long entry, long cutoff) {
        return jdbc.sql("SELECT k.* FROM " + runs.withChecks(Known.at("c.entry")) + " WHERE r.entry = :entry")
                .param("entry", entry)
                .param("cutoff", cutoff)
                .query((row, number) -> new Judge.Case(entry, row.getLong(1), row.getLong(2), row.getLong(3)))
                .single();
    }
}
