package dev.sunthread.genealogy.history;

import dev.sunthread.genealogy.records.LineRecords;
import dev.sunthread.genealogy.records.OpenLine;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Reads the kept lines that are open at a cut-off; a name means everything that was called so by then. */
final class LineHistory implements LineRecords {

    private static final Pattern OCCURRED = Pattern.compile("\"occurredAt\"\\s*+:\\s*+\"([^\"]{10,40})\"");

    private static final String OPEN = """
            SELECT l.entry, l.text,
              (SELECT array_agg(DISTINCT u.id) FROM inbox.line_name n JOIN production.unit u ON u.serial = n.name
               WHERE n.entry = l.entry AND n.kind = 'unit' AND %3$s),
              (SELECT array_agg(DISTINCT m.id) FROM inbox.line_name n JOIN materials.lot m ON m.number = n.name
               WHERE n.entry = l.entry AND n.kind = 'lot' AND %4$s),
              (SELECT array_agg(DISTINCT p.id) FROM inbox.line_name n JOIN catalog.position p ON p.code = n.name
               WHERE n.entry = l.entry AND n.kind = 'position' AND %5$s),
              (SELECT array_agg(DISTINCT c.id) FROM inbox.line_name n JOIN materials.container c ON c.label = n.name
               WHERE n.entry = l.entry AND n.kind = 'container' AND %6$s)
            FROM inbox.line l
            WHERE %1$s AND NOT EXISTS (SELECT FROM inbox.line_settlement s WHERE s.line = l.entry AND %2$s)
            """.formatted(
                    Known.at("l.entry"),
                    Known.at("s.entry"),
                    Known.named("u"),
                    Known.named("m"),
                    Known.named("p"),
                    Known.named("c"));

    private final JdbcClient jdbc;
    private final long cutoff;
    private final Clocks clocks;

    LineHistory(JdbcClient jdbc, long cutoff, Clocks clocks) {
        this.jdbc = jdbc;
        this.cutoff = cutoff;
        this.clocks = clocks;
    }

    @Override
    public List<OpenLine> open() {
        return jdbc.sql(OPEN)
                .param("cutoff", cutoff)
                .query((row, number) -> line(row))
                .list();
    }

    private OpenLine line(ResultSet row) throws SQLException {
        Set<TraceRef> named = new TreeSet<>();
        Sql.numbers(row, 3).forEach(unit -> named.add(TraceRef.unit(unit)));
        Sql.numbers(row, 4).forEach(lot -> named.add(new TraceRef(TraceKind.LOT, lot)));
        Sql.numbers(row, 6).forEach(container -> named.add(TraceRef.container(container)));
        Moment told = occurred(row.getString(2));
        return new OpenLine(
                row.getLong(1),
                told == null ? Moment.SINCE_EVER : told,
                told == null ? Moment.NEVER : told,
                named,
                Sql.numbers(row, 5));
    }

    private @Nullable Moment occurred(String text) {
        Matcher found = OCCURRED.matcher(text);
        if (!found.find()) {
            return null;
        }
        try {
            Instant instant = OffsetDateTime.parse(found.group(1)).toInstant();
            return clocks.told(null, ChronoUnit.MICROS.between(Instant.EPOCH, instant));
        } catch (DateTimeParseException | ArithmeticException e) {
            return null;
        }
    }
}
