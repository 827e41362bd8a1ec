package dev.sunthread.catalog.judging;

import dev.sunthread.kernel.verdict.Phrase;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Keeps what is judged again, and reads it in parts. */
final class JudgedAgainTable {

    private final Runs runs;
    private final JdbcClient jdbc;

    JudgedAgainTable(Runs runs, JdbcClient jdbc) {
        this.runs = runs;
        this.jdbc = jdbc;
    }

    /** What is kept of one run. */
    record Row(Selected selected, String before, Phrase whyBefore, Judged after) {}

    long begin(String asked, OffsetDateTime now, long cutoff, int total) {
        return jdbc.sql("""
                        INSERT INTO %s.judged_again (asked, asked_at, cutoff, total, done, state)
                        VALUES (?::jsonb, ?, ?, ?, 0, 'RUNNING') RETURNING id
                        """.formatted(runs.schema()))
                .params(asked, now, cutoff, total)
                .query(Long.class)
                .single();
    }

    void keep(long job, List<Row> rows) {
        jdbc.sql("""
                        INSERT INTO %1$s.judged_again_line (job, entry, run, before, before_said, after, after_said)
                        SELECT :job, n.entry, n.run, n.before, n.before_said::jsonb, n.after, n.after_said::jsonb FROM unnest(cast(:entries AS bigint[]), cast(:runs AS bigint[]),
                          cast(:before AS text[]), cast(:beforeSaid AS text[]), cast(:after AS text[]),
                          cast(:afterSaid AS text[])) AS n (entry, run, before, before_said, after, after_said)
                        """.formatted(runs.schema()))
                .param("job", job)
                .param(
                        "entries",
                        rows.stream().map(row -> row.selected().known().entry()).toArray(Long[]::new))
                .param("runs", rows.stream().map(row -> row.selected().run()).toArray(Long[]::new))
                .param("before", rows.stream().map(Row::before).toArray(String[]::new))
                .param(
                        "beforeSaid",
                        rows.stream()
                                .map(row -> KeptPhrase.write(row.whyBefore()))
                                .toArray(String[]::new))
                .param(
                        "after",
                        rows.stream()
                                .map(row -> row.after().judgement().outcome().words())
                                .toArray(String[]::new))
                .param(
                        "afterSaid",
                        rows.stream()
                                .map(row ->
                                        KeptPhrase.write(row.after().judgement().sentence()))
                                .toArray(String[]::new))
                .update();
        jdbc.sql("UPDATE %s.judged_again SET done = done + ? WHERE id = ?".formatted(runs.schema()))
                .params(rows.size(), job)
                .update();
    }

    void end(long job, String state, @Nullable String problem) {
        jdbc.sql("UPDATE %s.judged_again SET state = ?, problem = ? WHERE id = ?".formatted(runs.schema()))
                .param(state)
                .param(problem)
                .param(job)
                .update();
    }

    void forgetBefore(OffsetDateTime time) {
        jdbc.sql("DELETE FROM %s.judged_again WHERE asked_at < ?".formatted(runs.schema()))
                .param(time)
                .update();
    }

    Optional<JudgedAgain> find(long job) {
        return heads("WHERE id = :job")
                .param("job", job)
                .query(DataClassRowMapper.newInstance(JudgedAgain.class))
                .optional();
    }

    List<JudgedAgain> all() {
        return heads("ORDER BY id DESC LIMIT 100")
                .query(DataClassRowMapper.newInstance(JudgedAgain.class))
                .list();
    }

    private JdbcClient.StatementSpec heads(String which) {
        return jdbc.sql(
                "SELECT id, asked, asked_at, cutoff, total, done, lower(state) AS state, problem FROM %s.judged_again %s"
                        .formatted(runs.schema(), which));
    }

    List<JudgedAgain.Change> changes(long job) {
        String unit = runs.equals(Runs.TESTS) ? "count(DISTINCT r.unit)" : "0";
        return jdbc.sql("""
                        SELECT l.before, l.after, count(*) AS runs, %2$s AS units FROM %1$s.judged_again_line l
                        JOIN %1$s.run_record r USING (entry) WHERE l.job = ? GROUP BY l.before, l.after
                        ORDER BY l.before, l.after
                        """.formatted(runs.schema(), unit))
                .param(job)
                .query(DataClassRowMapper.newInstance(JudgedAgain.Change.class))
                .list();
    }

    long count(long job, @Nullable String before, @Nullable String after) {
        return lines("count(*)", "", job, before, after).query(Long.class).single();
    }

    List<JudgedAgain.Line> lines(long job, @Nullable String before, @Nullable String after, long offset, int most) {
        return lines(
                        "n.number AS run, %s AS unit, q.code AS equipment, r.started_at AS at, l.before, l.after,"
                                        .formatted(unit())
                                + " l.before_said, l.after_said",
                        "ORDER BY l.entry LIMIT :most OFFSET :offset",
                        job,
                        before,
                        after)
                .param("most", most)
                .param("offset", offset)
                .query((row, number) -> line(row))
                .list();
    }

    private static JudgedAgain.Line line(ResultSet row) throws SQLException {
        return new JudgedAgain.Line(
                row.getString("run"),
                row.getString("unit"),
                row.getString("equipment"),
                row.getObject("at", OffsetDateTime.class),
                row.getString("before"),
                row.getString("after"),
                KeptPhrase.read(row.getString("before_said")),
                KeptPhrase.read(row.getString("after_said")));
    }

    private String unit() {
        return runs.equals(Runs.TESTS)
                ? "(SELECT i.number || ' ' || u.serial FROM production.unit u JOIN catalog.item i ON i.id = u.item"
                        + " WHERE u.id = r.unit)"
                : "NULL";
    }

    private JdbcClient.StatementSpec lines(
            String what, String order, long job, @Nullable String before, @Nullable String after) {
        return jdbc.sql("""
                        SELECT %2$s FROM %1$s.judged_again_line l JOIN %1$s.run_record r USING (entry)
                        JOIN %1$s.run n ON n.id = r.run JOIN catalog.equipment q ON q.id = r.equipment
                        WHERE l.job = :job AND (:before::text IS NULL OR l.before = :before)
                          AND (:after::text IS NULL OR l.after = :after) %3$s
                        """.formatted(runs.schema(), what, order))
                .param("job", job)
                .param("before", before, java.sql.Types.VARCHAR)
                .param("after", after, java.sql.Types.VARCHAR);
    }
}
