package dev.sunthread.genealogy.answer;

import dev.sunthread.catalog.Levels;
import dev.sunthread.genealogy.AnswerHead;
import dev.sunthread.genealogy.AnswerLine;
import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.Count;
import dev.sunthread.genealogy.LevelOrder;
import dev.sunthread.genealogy.When;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;

/** Keeps the lines of answers, so that they can be filtered, sorted and paged in the database. */
@Repository
public class AnswerStore {

    private static final int BATCH = 1000;

    /** A page reads its answer within it. */
    private static final Duration IN_USE = Duration.ofMinutes(1);

    private static final Duration NOTED_AGAIN = Duration.ofSeconds(20);

    // another instance may be at it
    private static final String FORGET = """
            DELETE FROM genealogy.answer WHERE id IN (
              SELECT f.id FROM genealogy.answer f WHERE f.id IN (
                SELECT u.id FROM (
                  SELECT a.id, a.computed_at, a.used_at, sum(a.lines) OVER (ORDER BY a.used_at DESC, a.id) AS lines
                  FROM genealogy.answer a) u
                WHERE (u.computed_at < ? OR u.lines > ?) AND u.used_at < ?)
              FOR UPDATE SKIP LOCKED)
            """;

    private static final String INSERT_LINE = """
            INSERT INTO genealogy.answer_line (answer, kind, level, item, name, issuer, ever, now, at_shipment, at,
              reason, path, place, holds, shipments, depth, within, spot)
            VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
            """;

    private final JdbcTemplate jdbc;
    private final Levels levels;
    private final AnswerDetails details;

    public AnswerStore(JdbcTemplate jdbc, Levels levels, AnswerDetails details) {
        this.jdbc = jdbc;
        this.levels = levels;
        this.details = details;
    }

    /** Notes that an answer is asked for, and so stays; seldom, for a page asks often. */
    void use(String answer, OffsetDateTime now) {
        jdbc.update(
                "UPDATE genealogy.answer SET used_at = ? WHERE id = ? AND used_at < ?",
                now,
                answer,
                now.minus(NOTED_AGAIN));
    }

    /** Forgets what is older, and what was used least recently of all that is more; nothing that is in use. */
    public void forget(OffsetDateTime oldest, long lines, OffsetDateTime now) {
        jdbc.update(FORGET, oldest, lines, now.minus(IN_USE));
    }

    /** Keeps an answer; false if another request just kept the same one. */
    public boolean keep(AnswerHead head, String asked, OffsetDateTime now, Answering.Answered answered) {
        int kept = jdbc.update(
                """
                INSERT INTO genealogy.answer (id, asked, cutoff, suspects, cutoff_recorded_at, hash, open_findings,
                  open_lines, computed_at, used_at, lines, notes)
                VALUES (?, ?::jsonb, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (id) DO NOTHING
                """,
                head.id(),
                asked,
                head.question().cutoff(),
                head.suspects().toArray(String[]::new),
                head.cutoffRecordedAt(),
                head.hash(),
                head.openFindings(),
                head.openLines(),
                now,
                now,
                answered.lines().size(),
                head.notes().toArray(String[]::new));
        if (kept == 1) {
            Map<String, Integer> depths =
                    levels.depths(Objects.requireNonNull(head.question().cutoff()));
            jdbc.batchUpdate(INSERT_LINE, answered.lines(), BATCH, (statement, line) -> {
                fill(statement, head.id(), line);
                statement.setInt(16, depths.getOrDefault(line.level(), 0));
            });
            details.keepSuspects(head.id(), answered.asked(), depths);
            details.keep(head.id(), answered.flows(), answered.touching());
        }
        return kept == 1;
    }

    private static void fill(PreparedStatement statement, String answer, AnswerLine line) throws SQLException {
        Connection connection = statement.getConnection();
        statement.setString(1, answer);
        statement.setString(2, line.kind());
        statement.setString(3, line.level());
        statement.setString(4, line.item());
        statement.setString(5, line.name());
        statement.setString(6, line.issuer());
        statement.setString(7, line.ever().name());
        setClass(statement, 8, line.now());
        setClass(statement, 9, line.atShipment());
        setClass(statement, 10, line.at());
        statement.setString(11, line.reason());
        statement.setArray(12, connection.createArrayOf("text", line.path().toArray()));
        statement.setString(13, line.place());
        statement.setArray(14, connection.createArrayOf("text", line.holds().toArray()));
        statement.setString(17, line.within());
        statement.setString(18, line.spot());
        statement.setArray(15, connection.createArrayOf("text", line.shipments().toArray()));
    }

    private static void setClass(PreparedStatement statement, int index, @Nullable Certainty certainty)
            throws SQLException {
        if (certainty == null) {
            statement.setNull(index, Types.VARCHAR);
        } else {
            statement.setString(index, certainty.name());
        }
    }

    /** The counts of distinct things per level and class, for each time that was asked. */
    public List<Count> counts(String answer) {
        return jdbc.query(
                """
                SELECT w.told, level, count(*) FILTER (WHERE w.class = 'CERTAIN'),
                  count(*) FILTER (WHERE w.class = 'POSSIBLE'), count(*) FILTER (WHERE w.class = 'UNPROVEN')
                FROM genealogy.answer_line, LATERAL (VALUES (0, 'EVER', ever), (1, 'NOW', now),
                  (2, 'AT_SHIPMENT', at_shipment), (3, 'AT', at)) AS w (ordinal, told, class)
                WHERE answer = ? GROUP BY w.ordinal, w.told, kind, depth, level ORDER BY w.ordinal, %s, level
                """.formatted(LevelOrder.RANK),
                (row, number) -> new Count(
                        When.valueOf(row.getString(1)),
                        row.getString(2),
                        row.getLong(3),
                        row.getLong(4),
                        row.getLong(5)),
                answer);
    }

    public long total(String answer, LineQuery query) {
        Long total = jdbc.queryForObject(
                "SELECT count(*) FROM genealogy.answer_line WHERE " + query.where(), Long.class, query.params(answer));
        return total == null ? 0 : total;
    }

    public void each(String answer, LineQuery query, Consumer<AnswerLine> each) {
        jdbc.query(
                query.select(),
                (org.springframework.jdbc.core.RowCallbackHandler) row -> each.accept(LineQuery.line(row)),
                query.params(answer));
    }
}
