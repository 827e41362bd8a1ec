package dev.sunthread.inbox;

import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Known;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Kept lines as they stand at a cut-off. */
@Repository
public class Lines {

    private static final String OPEN = """
            FROM inbox.line l JOIN ledger.entry e ON e.number = l.entry
            WHERE %s AND NOT EXISTS (SELECT FROM inbox.line_settlement s WHERE s.line = l.entry AND %s)
            """.formatted(Known.at("l.entry"), Known.at("s.entry"));

    private final JdbcClient jdbc;

    Lines(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** How many lines wait for a person. */
    public long count(long cutoff) {
        return jdbc.sql("SELECT count(*) " + OPEN)
                .param("cutoff", cutoff)
                .query(Long.class)
                .single();
    }

    /** The entries of open lines that name any of these texts. */
    public List<Long> naming(List<String> names, long cutoff) {
        return jdbc.sql(
                        "SELECT l.entry " + OPEN
                                + " AND EXISTS (SELECT FROM inbox.line_name n WHERE n.entry = l.entry AND n.name = ANY (:names))")
                .param("cutoff", cutoff)
                .param("names", names.toArray(String[]::new))
                .query((row, number) -> row.getLong(1))
                .list();
    }

    /** Open lines, the newest first, at most so many. */
    public List<OpenLine> open(long cutoff, int most) {
        return read(OPEN + " ORDER BY l.entry DESC LIMIT " + most, Map.of("cutoff", cutoff));
    }

    /** Open lines behind the first so many, the newest first, at most so many. */
    public List<OpenLine> open(long cutoff, long offset, int most) {
        return read(
                OPEN + " ORDER BY l.entry DESC LIMIT :most OFFSET :offset",
                Map.of("cutoff", cutoff, "most", most, "offset", offset));
    }

    /** How many open lines are of a file. */
    public long countOfFile(String file, long cutoff) {
        return countOfFile("", file, cutoff);
    }

    /** How many open lines of a file name a unit, lot, position, container, carrier or run. */
    public long countOfFileThatName(String file, long cutoff) {
        return countOfFile(" AND EXISTS (SELECT FROM inbox.line_name n WHERE n.entry = l.entry)", file, cutoff);
    }

    private long countOfFile(String condition, String file, long cutoff) {
        return jdbc.sql("SELECT count(*) " + OPEN + " AND l.file = :file" + condition)
                .param("cutoff", cutoff)
                .param("file", file)
                .query(Long.class)
                .single();
    }

    /** Open lines of a file that were kept by an earlier cut-off, behind the first so many, the newest first, at most so many. */
    public List<OpenLine> ofFile(String file, long keptBy, long cutoff, long offset, int most) {
        return read(
                OPEN
                        + " AND l.file = :file AND l.entry IN (SELECT p.entry FROM ledger.position p WHERE p.position <= :by)"
                        + " ORDER BY l.entry DESC LIMIT :most OFFSET :offset",
                Map.of("cutoff", cutoff, "file", file, "by", keptBy, "most", most, "offset", offset));
    }

    /** Those of these entries that are open lines, the newest first. */
    public List<OpenLine> among(Collection<Long> entries, long cutoff) {
        return read(
                OPEN + " AND l.entry = ANY (:entries) ORDER BY l.entry DESC",
                Map.of("cutoff", cutoff, "entries", entries.toArray(Long[]::new)));
    }

    /** @throws Refused if no open line has this id */
    public OpenLine open(String entry, long cutoff) {
        return read(OPEN + " AND e.id = :entry", Map.of("cutoff", cutoff, "entry", entry)).stream()
                .findFirst()
                .orElseThrow(() -> new Refused("No open line has this id", "Go back to the inbox and choose a line"));
    }

    private List<OpenLine> read(String from, Map<String, Object> params) {
        record Row(long number, OpenLine line) {}
        List<Row> rows = jdbc.sql("SELECT l.entry, e.id, l.file, l.line_number, e.recorded_at, l.text " + from)
                .params(params)
                .query((rs, n) -> new Row(
                        rs.getLong(1),
                        new OpenLine(
                                rs.getString(2),
                                rs.getString(3),
                                rs.getLong(4),
                                rs.getObject(5, java.time.OffsetDateTime.class),
                                rs.getString(6),
                                List.of())))
                .list();
        Map<Long, List<KeptLine.Problem>> problems =
                problems(rows.stream().map(Row::number).toList());
        return rows.stream()
                .map(row -> withProblems(row.line(), problems.getOrDefault(row.number(), List.of())))
                .toList();
    }

    private Map<Long, List<KeptLine.Problem>> problems(List<Long> entries) {
        return jdbc
                .sql(
                        "SELECT entry, field, reason, remedy FROM inbox.line_problem WHERE entry = ANY (?) ORDER BY ordinal")
                .param(entries.toArray(Long[]::new))
                .query((rs, n) -> Map.entry(
                        rs.getLong(1), new KeptLine.Problem(rs.getString(2), rs.getString(3), rs.getString(4))))
                .list()
                .stream()
                .collect(Collectors.groupingBy(
                        Map.Entry::getKey, Collectors.mapping(Map.Entry::getValue, Collectors.toList())));
    }

    private static OpenLine withProblems(OpenLine line, List<KeptLine.Problem> problems) {
        return new OpenLine(line.entry(), line.file(), line.lineNumber(), line.keptAt(), line.text(), problems);
    }
}
