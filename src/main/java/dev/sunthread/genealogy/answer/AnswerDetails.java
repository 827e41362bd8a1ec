package dev.sunthread.genealogy.answer;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.inbox.OpenFinding;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;

/** Keeps, beside the lines of an answer, how they were reached from each other and what touches them. */
@Repository
public class AnswerDetails {

    private static final int BATCH = 1000;

    private final JdbcTemplate jdbc;

    public AnswerDetails(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    public void keep(String answer, List<FlowCount> flows, Touching touching) {
        keepFlows(answer, flows);
        List<OpenFinding> findings = touching.findings();
        jdbc.update(
                """
                INSERT INTO genealogy.answer_finding (answer, finding_entry, finding_ordinal)
                SELECT ?, e.number, f.ordinal FROM unnest(?::text[], ?::integer[]) AS f (id, ordinal)
                JOIN ledger.entry e ON e.id = f.id
                """,
                answer,
                findings.stream().map(OpenFinding::entry).toArray(String[]::new),
                findings.stream().map(OpenFinding::ordinal).toArray(Integer[]::new));
        jdbc.update(
                "INSERT INTO genealogy.answer_open_line (answer, line) SELECT ?, unnest(?::bigint[])",
                answer,
                touching.lines().toArray(Long[]::new));
    }

    void keepSuspects(String answer, List<SuspectLine> suspects, Map<String, Integer> depths) {
        jdbc.batchUpdate("""
                INSERT INTO genealogy.answer_suspect (answer, kind, level, depth, item, name, issuer, class)
                VALUES (?, ?, ?, ?, ?, ?, ?, ?)
                """, suspects, BATCH, (statement, suspect) -> {
            Named named = suspect.named();
            statement.setString(1, answer);
            statement.setString(2, named.kind());
            statement.setString(3, named.level());
            statement.setInt(4, depths.getOrDefault(named.level(), 0));
            statement.setString(5, named.item());
            statement.setString(6, named.name());
            statement.setString(7, named.issuer());
            statement.setString(8, suspect.certainty().name());
        });
    }

    private void keepFlows(String answer, List<FlowCount> flows) {
        jdbc.batchUpdate("""
                INSERT INTO genealogy.answer_flow (answer, near_level, near_class, level, class, things)
                VALUES (?, ?, ?, ?, ?, ?)
                """, flows, BATCH, (statement, flow) -> {
            statement.setString(1, answer);
            statement.setString(2, flow.nearLevel());
            statement.setString(3, name(flow.nearClass()));
            statement.setString(4, flow.level());
            statement.setString(5, flow.certainty().name());
            statement.setLong(6, flow.things());
        });
    }

    public List<FlowCount> flows(String answer) {
        return jdbc.query(
                "SELECT near_level, near_class, level, class AS certainty, things FROM genealogy.answer_flow WHERE answer = ?",
                DataClassRowMapper.newInstance(FlowCount.class),
                answer);
    }

    private static @Nullable String name(@Nullable Certainty certainty) {
        return certainty == null ? null : certainty.name();
    }
}
