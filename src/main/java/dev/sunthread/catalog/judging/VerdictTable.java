package dev.sunthread.catalog.judging;

import dev.sunthread.ledger.Known;
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

    /** Runs of a recipe or specification, as known at a cut-off, without a verdict under a revision. */
    List<Judge.Case> missingUnder(long thing, long revision, long cutoff) {
        return jdbc.sql("""
                        SELECT r.entry, k.checked FROM %1$s
                        WHERE r.%2$s = :thing AND %3$s AND NOT EXISTS (SELECT FROM %4$s.verdict v
                          WHERE v.entry = r.entry AND v.revision = :revision AND v.checked = k.checked)
                        """.formatted(
                        runs.withNextCheck(Known.at("c.entry")), runs.thing(), Known.at("r.entry"), runs.schema()))
                .param("thing", thing)
                .param("revision", revision)
                .param("cutoff", cutoff)
                .query((row, number) -> new Judge.Case(row.getLong(1), row.getLong(2)))
                .list();
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
