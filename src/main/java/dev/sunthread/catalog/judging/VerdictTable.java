package dev.sunthread.catalog.judging;

import dev.sunthread.kernel.verdict.Outcome;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.ledger.Known;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/** The verdicts that are kept of one module's runs. */
final class VerdictTable {

    private final Runs runs;
    private final JdbcClient jdbc;

    VerdictTable(Runs runs, JdbcClient jdbc) {
        this.runs = runs;
        this.jdbc = jdbc;
    }

    /** Runs without the verdict that would stand now, under revisions that can be judged by. */
    List<Standing> missingStanding(String condition, long param) {
        return jdbc.sql("""
                        SELECT p.entry, r.entry, k.checked, k.lit_before, k.lit_after FROM %1$s %2$s
                        JOIN catalog.%3$s_terms t ON t.entry = p.entry
                        WHERE %4$s AND %5$s AND NOT EXISTS (SELECT FROM %6$s.verdict v
                          WHERE v.entry = r.entry AND v.revision = p.entry AND v.checked = k.checked
                            AND v.lit_before = k.lit_before AND v.lit_after = k.lit_after)
                        """.formatted(
                                runs.withChecks(Known.now("c.entry")),
                                runs.inForce(),
                                runs.thing(),
                                condition,
                                Known.now("r.entry"),
                                runs.schema()))
                .param("param", param)
                .query(VerdictTable::standing)
                .list();
    }

    /** These runs under revisions that can be judged by, as known now, in the order they began. */
    List<Standing> standing(Collection<Long> entries) {
        return jdbc.sql("""
                        SELECT p.entry, r.entry, k.checked, k.lit_before, k.lit_after FROM %1$s %2$s
                        JOIN catalog.%3$s_terms t ON t.entry = p.entry
                        WHERE r.entry = ANY (:entries) ORDER BY r.started_at, r.entry
                        """.formatted(runs.withChecks(Known.now("c.entry")), runs.inForce(), runs.thing()))
                .param("entries", entries.toArray(Long[]::new))
                .query(VerdictTable::standing)
                .list();
    }

    private static Standing standing(ResultSet row, int number) throws SQLException {
        return new Standing(
                row.getLong(1), new Judge.Case(row.getLong(2), row.getLong(3), row.getLong(4), row.getLong(5)));
    }

    /** The outcomes that are kept of these runs under the revision that judges each. */
    Map<Long, Outcome> known(List<Selected> selected) {
        Map<Long, Outcome> known = new HashMap<>();
        jdbc.sql("""
                        SELECT v.entry, v.outcome FROM unnest(cast(:entries AS bigint[]), cast(:checks AS bigint[]),
                          cast(:before AS bigint[]), cast(:after AS bigint[]), cast(:revisions AS bigint[]))
                          AS n (entry, checked, lit_before, lit_after, revision)
                        JOIN %s.verdict v USING (entry, checked, lit_before, lit_after, revision)
                        """.formatted(runs.schema()))
                .params(cases(selected.stream().map(Selected::known).toList()))
                .param("revisions", selected.stream().map(Selected::revision).toArray(Long[]::new))
                .query((ResultSet row) -> {
                    known.put(row.getLong(1), Outcome.valueOf(row.getString(2)));
                });
        return known;
    }

    /** The verdict that stands for each of these now: by raw data, else as it was told. */
    Map<Long, Verdicts.Stood> stood(List<Long> entries) {
        Map<Long, Verdicts.Stood> stood = new HashMap<>();
        String told = runs.equals(Runs.TESTS) ? "'told to ' || lower(r.verdict)" : "'not judged'";
        jdbc.sql("""
                        SELECT r.entry, coalesce(lower(replace(s.outcome, '_', ' ')), %2$s),
                          s.said, s.entry IS NOT NULL
                        FROM %1$s.run_record r LEFT JOIN %1$s.standing s USING (entry) WHERE r.entry = ANY (?)
                        """.formatted(runs.schema(), told))
                .param(entries.toArray(Long[]::new))
                .query((ResultSet row) -> {
                    String said = row.getString(3);
                    Phrase why = said == null ? unsaid(row.getBoolean(4)) : KeptPhrase.read(said);
                    stood.put(row.getLong(1), new Verdicts.Stood(row.getString(2), why));
                });
        return stood;
    }

    private static Phrase unsaid(boolean limited) {
        return limited ? Phrase.of("judged.not-yet") : Verdicts.Stood.NOT_AT_ALL.why();
    }

    // what an answer reads is read without writing: there a verdict counts and is not kept
    void keep(long revision, Map<Judge.Case, Judged> judged) {
        if (TransactionSynchronizationManager.isCurrentTransactionReadOnly()) {
            return;
        }
        List<Map.Entry<Judge.Case, Judged>> rows = List.copyOf(judged.entrySet());
        jdbc.sql("""
                        INSERT INTO %s.verdict
                          (entry, revision, checked, lit_before, lit_after, outcome, said, measured)
                        SELECT n.entry, :revision, n.checked, n.before, n.after, n.outcome, n.said::jsonb, n.measured
                        FROM unnest(cast(:entries AS bigint[]), cast(:checks AS bigint[]), cast(:before AS bigint[]),
                          cast(:after AS bigint[]), cast(:outcomes AS text[]), cast(:said AS text[]),
                          cast(:measured AS boolean[])) AS n (entry, checked, before, after, outcome, said, measured)
                        ON CONFLICT DO NOTHING
                        """.formatted(runs.schema()))
                .param("revision", revision)
                .params(cases(rows.stream().map(Map.Entry::getKey).toList()))
                .param(
                        "outcomes",
                        rows.stream()
                                .map(row -> row.getValue().judgement().outcome().name())
                                .toArray(String[]::new))
                .param(
                        "said",
                        rows.stream()
                                .map(row -> KeptPhrase.write(
                                        row.getValue().judgement().sentence()))
                                .toArray(String[]::new))
                .param(
                        "measured",
                        rows.stream().map(row -> row.getValue().measured()).toArray(Boolean[]::new))
                .update();
    }

    private static Map<String, Long[]> cases(List<Judge.Case> cases) {
        return Map.of(
                "entries", numbers(cases, Judge.Case::entry),
                "checks", numbers(cases, Judge.Case::checked),
                "before", numbers(cases, Judge.Case::before),
                "after", numbers(cases, Judge.Case::after));
    }

    private static Long[] numbers(List<Judge.Case> cases, Function<Judge.Case, Long> number) {
        return cases.stream().map(number).toArray(Long[]::new);
    }
}
