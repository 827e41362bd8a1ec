package dev.sunthread.catalog.judging;

import dev.sunthread.kernel.verdict.Outcome;
import dev.sunthread.ledger.Known;
import java.sql.ResultSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The verdicts that are kept of one module's runs. */
final class VerdictTable {

    /** A run whose standing verdict is not kept. */
    record Missing(long revision, Judge.Case run) {}

    private final Runs runs;
    private final JdbcClient jdbc;

    VerdictTable(Runs runs, JdbcClient jdbc) {
        this.runs = runs;
        this.jdbc = jdbc;
    }

    /** Runs without the verdict that would stand now, under revisions that can be judged by. */
    List<Missing> missingStanding(String condition, long param) {
        return jdbc.sql("""
                        SELECT p.entry, r.entry, k.checked FROM %1$s %2$s
                        JOIN catalog.%3$s_terms t ON t.entry = p.entry
                        WHERE %4$s = :param AND %5$s AND NOT EXISTS (SELECT FROM %6$s.verdict v
                          WHERE v.entry = r.entry AND v.revision = p.entry AND v.checked = k.checked)
                        """.formatted(
                                runs.withNextCheck(Known.now("c.entry")),
                                runs.inForce(),
                                runs.thing(),
                                condition,
                                Known.now("r.entry"),
                                runs.schema()))
                .param("param", param)
                .query((row, number) -> new Missing(row.getLong(1), new Judge.Case(row.getLong(2), row.getLong(3))))
                .list();
    }

    /** The outcomes that are kept of these runs under the revision that judges each. */
    Map<Long, Outcome> known(List<Selected> selected) {
        Map<Long, Outcome> known = new HashMap<>();
        jdbc.sql("""
                        SELECT v.entry, v.outcome FROM unnest(cast(:entries AS bigint[]), cast(:checks AS bigint[]),
                          cast(:revisions AS bigint[])) AS n (entry, checked, revision)
                        JOIN %s.verdict v ON v.entry = n.entry AND v.checked = n.checked AND v.revision = n.revision
                        """.formatted(runs.schema()))
                .param(
                        "entries",
                        selected.stream().map(run -> run.known().entry()).toArray(Long[]::new))
                .param(
                        "checks",
                        selected.stream().map(run -> run.known().checked()).toArray(Long[]::new))
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
                          coalesce(s.sentence, 'No revision in force then states what could be judged')
                        FROM %1$s.run_record r LEFT JOIN %1$s.standing s USING (entry) WHERE r.entry = ANY (?)
                        """.formatted(runs.schema(), told))
                .param(entries.toArray(Long[]::new))
                .query((ResultSet row) -> {
                    stood.put(row.getLong(1), new Verdicts.Stood(row.getString(2), row.getString(3)));
                });
        return stood;
    }

    void keep(long revision, Map<Judge.Case, Judged> judged) {
        List<Map.Entry<Judge.Case, Judged>> rows = List.copyOf(judged.entrySet());
        jdbc.sql("""
                        INSERT INTO %s.verdict (entry, revision, checked, outcome, sentence, measured)
                        SELECT n.entry, :revision, n.checked, n.outcome, n.sentence, n.measured
                        FROM unnest(cast(:entries AS bigint[]), cast(:checks AS bigint[]), cast(:outcomes AS text[]),
                          cast(:sentences AS text[]), cast(:measured AS boolean[]))
                          AS n (entry, checked, outcome, sentence, measured)
                        ON CONFLICT DO NOTHING
                        """.formatted(runs.schema()))
                .param("revision", revision)
                .param("entries", rows.stream().map(row -> row.getKey().entry()).toArray(Long[]::new))
                .param(
                        "checks",
                        rows.stream().map(row -> row.getKey().checked()).toArray(Long[]::new))
                .param(
                        "outcomes",
                        rows.stream()
                                .map(row -> row.getValue().judgement().outcome().name())
                                .toArray(String[]::new))
                .param(
                        "sentences",
                        rows.stream()
                                .map(row -> row.getValue().judgement().sentence())
                                .toArray(String[]::new))
                .param(
                        "measured",
                        rows.stream().map(row -> row.getValue().measured()).toArray(Boolean[]::new))
                .update();
    }
}
