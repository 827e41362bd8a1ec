package dev.sunthread.genealogy;

import dev.sunthread.genealogy.answer.AnswerDetails;
import dev.sunthread.genealogy.answer.FlowDrawing;
import java.util.List;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** Draws kept answers: how their things were reached from each other, and where they are. */
@Service
public class TraceFlows {

    private static final String LEVELS = """
            SELECT kind, level, depth, ever AS certainty, count(*) AS things FROM genealogy.answer_line
            WHERE answer = ? GROUP BY kind, level, depth, ever
            """;

    /** Units inside others are where those are: the outermost tell the place for all. */
    private static final String PLACES = """
            SELECT spot AS place, level, ever AS certainty, count(*) AS things FROM genealogy.answer_line
            WHERE answer = ? AND kind = 'UNIT' AND within IS NULL GROUP BY spot, level, ever
            """;

    private final AnswerDetails details;
    private final JdbcClient jdbc;

    TraceFlows(AnswerDetails details, JdbcClient jdbc) {
        this.details = details;
        this.jdbc = jdbc;
    }

    /** The picture of a kept answer. */
    public Flow of(AnswerHead head) {
        List<FlowDrawing.Level> levels = jdbc.sql(LEVELS)
                .param(head.id())
                .query(DataClassRowMapper.newInstance(FlowDrawing.Level.class))
                .list();
        List<FlowDrawing.Stand> stands = jdbc.sql(PLACES)
                .param(head.id())
                .query(DataClassRowMapper.newInstance(FlowDrawing.Stand.class))
                .list();
        return new FlowDrawing(head.question().way(), levels, stands)
                .of(details.flows(head.id()), head.suspects().size());
    }

    /** Every place where units of the answer were last seen, those with most of them first, at most so many. */
    public List<String> places(AnswerHead head, int most) {
        return jdbc.sql("""
                        SELECT spot FROM genealogy.answer_line WHERE answer = ? AND spot IS NOT NULL
                        GROUP BY spot ORDER BY count(*) DESC, spot LIMIT ?
                        """)
                .params(head.id(), most)
                .query((row, number) -> row.getString(1))
                .list();
    }
}
