package dev.sunthread.web.compare;

import dev.sunthread.genealogy.LevelOrder;
import dev.sunthread.web.compare.JoinedAnswer.JoinedCount;
import dev.sunthread.web.compare.JoinedAnswer.LevelRow;
import dev.sunthread.web.compare.JoinedAnswer.Line;
import dev.sunthread.web.compare.JoinedAnswer.Side;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Joins kept answers thing by thing. What an answer was asked of is in it, though its lines don't tell of it. */
@Repository
class JoinedAnswers {

    /** The words for classes happen to stand in the order of strength, so that the greatest is the weakest. */
    private static final String TOLD = """
            WITH asked AS (SELECT answer, nth FROM unnest(cast(:answers AS text[])) WITH ORDINALITY AS a (answer, nth)),
            part AS (
              SELECT a.nth, true AS told, l.kind, l.level, l.depth, l.item, l.name, l.issuer, l.ever, l.reason, l.place
              FROM asked a JOIN genealogy.answer_line l USING (answer)
              UNION ALL
              SELECT a.nth, false, s.kind, s.level, s.depth, s.item, s.name, s.issuer, s.class,
                'It is what the trace began with', NULL
              FROM asked a JOIN genealogy.answer_suspect s USING (answer)),
            thing AS (
              SELECT kind, level, max(depth) AS depth, item, name, issuer, bool_or(told) AS told,
                count(DISTINCT nth) AS answers, max(ever) AS weakest, max(place) AS place,
                max(ever) FILTER (WHERE nth = 1 AND told) AS own, min(ever) FILTER (WHERE nth > 1) AS other,
                array_agg(nth ORDER BY nth) AS nths, array_agg(ever ORDER BY nth) AS classes,
                array_agg(reason ORDER BY nth) AS reasons
              FROM part GROUP BY kind, level, item, name, issuer),
            joined AS (
              SELECT t.*, w.way, w.class FROM thing t CROSS JOIN LATERAL (VALUES
                ('ALL', CASE WHEN t.told AND t.answers = :several THEN t.weakest END),
                ('ONLY', CASE WHEN t.answers = 1 THEN t.own END),
                ('OPEN', CASE WHEN t.other <> 'CERTAIN' THEN t.own END)) AS w (way, class)
              WHERE w.class IS NOT NULL)
            """;

    private static final String CHOSEN = """
             FROM joined WHERE way = :join AND (cast(:level AS text) IS NULL OR level = :level)
               AND (cast(:class AS text) IS NULL OR class = :class)
            """;

    private final JdbcClient jdbc;

    JoinedAnswers(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<LevelRow> counts(List<String> answers) {
        Map<String, List<JoinedCount>> levels = new LinkedHashMap<>();
        about(
                        TOLD + "SELECT level, way, class, count(*) FROM joined GROUP BY level, way, class, "
                                + LevelOrder.RANK + " ORDER BY min(" + LevelOrder.RANK + "), level, way, class",
                        answers)
                .query(row -> {
                    levels.computeIfAbsent(row.getString(1), any -> new ArrayList<>())
                            .add(new JoinedCount(word(row.getString(2)), word(row.getString(3)), row.getLong(4)));
                });
        return levels.entrySet().stream()
                .map(level -> new LevelRow(level.getKey(), level.getValue()))
                .toList();
    }

    long total(List<String> answers, JoinedRequest asked) {
        return chosen(TOLD + "SELECT count(*)" + CHOSEN, answers, asked)
                .query(Long.class)
                .single();
    }

    List<Line> lines(List<String> answers, JoinedRequest asked, long offset, int most) {
        return chosen(
                        TOLD + "SELECT *" + CHOSEN + " ORDER BY " + LevelOrder.RANK
                                + ", level, name, item, issuer LIMIT :most OFFSET :offset",
                        answers,
                        asked)
                .param("most", most)
                .param("offset", offset)
                .query((row, number) -> line(row, answers.size()))
                .list();
    }

    private static Line line(ResultSet row, int several) throws SQLException {
        return new Line(
                row.getString("kind"),
                row.getString("level"),
                row.getString("item"),
                row.getString("name"),
                row.getString("issuer"),
                word(row.getString("class")),
                row.getString("place"),
                sides(row, several));
    }

    private static List<Side> sides(ResultSet row, int several) throws SQLException {
        Long[] nths = (Long[]) row.getArray("nths").getArray();
        String[] classes = (String[]) row.getArray("classes").getArray();
        String[] reasons = (String[]) row.getArray("reasons").getArray();
        List<Side> sides = new ArrayList<>(Collections.nCopies(several, Side.NONE));
        for (int i = 0; i < nths.length; i++) {
            sides.set(nths[i].intValue() - 1, new Side(word(classes[i]), reasons[i]));
        }
        return sides;
    }

    private static String word(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    private JdbcClient.StatementSpec chosen(String sql, List<String> answers, JoinedRequest asked) {
        return about(sql, answers)
                .param("join", asked.joined().name())
                .param("level", asked.ofLevel())
                .param("class", asked.ofClass());
    }

    private JdbcClient.StatementSpec about(String sql, List<String> answers) {
        return jdbc.sql(sql).param("answers", answers.toArray(String[]::new)).param("several", answers.size());
    }
}
