package dev.sunthread.web.compare;

import dev.sunthread.genealogy.LevelOrder;
import dev.sunthread.kernel.Refused;
import dev.sunthread.web.Paged;
import dev.sunthread.web.compare.AnswerDifference.LevelRow;
import dev.sunthread.web.compare.AnswerDifference.Line;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Compares kept answers line by line, by the class that each line has ever. */
@Repository
class AnswerDifferences {

    private static final int A_PAGE = 100;
    private static final int MOST_KEPT = 50;
    private static final String RANK = LevelOrder.rank("c.kind", "c.depth");

    private static final String KEPT = """
            SELECT a.id, a.hash, a.asked::text AS asked, a.cutoff, a.computed_at,
                   (SELECT count(*) FROM genealogy.answer_line l WHERE l.answer = a.id) AS lines
            FROM genealogy.answer a
            """;

    private static final String COMPARED = """
            (SELECT CASE WHEN l.name IS NULL THEN 'joined' WHEN r.name IS NULL THEN 'left'
                      WHEN l.ever <> r.ever THEN 'changed' ELSE 'same' END AS difference,
                    kind, level, coalesce(r.depth, l.depth) AS depth, item, name, issuer, lower(l.ever) AS before,
                    lower(r.ever) AS after, coalesce(r.reason, l.reason) AS reason
             FROM (SELECT *, coalesce(issuer, '') AS own FROM genealogy.answer_line WHERE answer = :left) l
             FULL JOIN (SELECT *, coalesce(issuer, '') AS own FROM genealogy.answer_line WHERE answer = :right) r
               USING (kind, level, item, name, own)
             CROSS JOIN LATERAL (SELECT coalesce(r.issuer, l.issuer) AS issuer) whose) c
            """.replace("item, name, issuer, lower", "item, name, whose.issuer, lower");

    private static final String CHOSEN = " FROM " + COMPARED + """
             WHERE c.difference <> 'same' AND (cast(:show AS text) IS NULL OR c.difference = :show)
               AND (cast(:level AS text) IS NULL OR c.level = :level)
            """;

    private final JdbcClient jdbc;

    AnswerDifferences(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The answers asked last. */
    List<KeptAnswer> kept() {
        return jdbc.sql(KEPT + " ORDER BY a.computed_at DESC, a.id LIMIT " + MOST_KEPT)
                .query(DataClassRowMapper.newInstance(KeptAnswer.class))
                .list();
    }

    /** The answer with this id, or the one asked last whose hash begins so. */
    Optional<KeptAnswer> find(String name) {
        return jdbc.sql(KEPT
                        + " WHERE a.id = :name OR starts_with(a.hash, :name) ORDER BY a.id = :name DESC, a.computed_at DESC"
                        + " LIMIT 1")
                .param("name", name)
                .query(DataClassRowMapper.newInstance(KeptAnswer.class))
                .optional();
    }

    /** The same. @throws Refused if none is kept */
    KeptAnswer named(String name) {
        return find(name.strip())
                .orElseThrow(() -> new Refused(
                        "No kept answer has the id or hash " + name.strip(),
                        "Answers are kept for a week: ask the trace again, as known at the same ledger position"));
    }

    AnswerDifference between(KeptAnswer left, KeptAnswer right, AnswerPair asked) {
        List<LevelRow> levels = about("""
                        SELECT c.level, count(*) FILTER (WHERE c.difference = 'same') AS same,
                          count(*) FILTER (WHERE c.difference = 'joined') AS joined,
                          count(*) FILTER (WHERE c.difference = 'left') AS "left",
                          count(*) FILTER (WHERE c.difference = 'changed') AS changed
                        FROM %s GROUP BY c.level ORDER BY min(%s), c.level
                        """.formatted(COMPARED, RANK), left, right)
                .query(DataClassRowMapper.newInstance(LevelRow.class))
                .list();
        long total = chosen("SELECT count(*)" + CHOSEN, left, right, asked.show(), asked.level())
                .query(Long.class)
                .single();
        return new AnswerDifference(
                left,
                right,
                levels,
                Paged.of(asked.page(), A_PAGE, total, (offset, most) -> lines(left, right, asked, offset, most)));
    }

    /** Every line that differs, as the filter leaves them. */
    List<Line> lines(KeptAnswer left, KeptAnswer right, AnswerPair asked, long offset, int most) {
        return chosen(
                        "SELECT c.*" + CHOSEN + " ORDER BY " + RANK
                                + ", c.level, c.name, c.item, c.issuer LIMIT :most OFFSET :offset",
                        left,
                        right,
                        asked.show(),
                        asked.level())
                .param("most", most)
                .param("offset", offset)
                .query(DataClassRowMapper.newInstance(Line.class))
                .list();
    }

    private JdbcClient.StatementSpec chosen(
            String sql, KeptAnswer left, KeptAnswer right, @Nullable String show, @Nullable String level) {
        return about(sql, left, right).param("show", show).param("level", level);
    }

    private JdbcClient.StatementSpec about(String sql, KeptAnswer left, KeptAnswer right) {
        return jdbc.sql(sql).param("left", left.id()).param("right", right.id());
    }
}
