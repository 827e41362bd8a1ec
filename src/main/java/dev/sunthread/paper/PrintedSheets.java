package dev.sunthread.paper;

import dev.sunthread.ledger.Known;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What was printed, and what became of each record. */
@Repository
public class PrintedSheets {

    private static final String BECAME = """
            SELECT r.entry, r.ordinal, r.record AS id, e.actor AS "by", e.recorded_by AS entered_by, e.recorded_at AS entered_at,
              e.occurred_at, v.what AS fate, v.why
            FROM %%s r
            LEFT JOIN LATERAL (
              SELECT l.actor, l.recorded_by, l.recorded_at, l.occurred_at
              FROM paper.entered_record n JOIN ledger.entry l ON l.number = n.entry
              WHERE n.record = r.record AND %s ORDER BY n.entry LIMIT 1) e ON true
            LEFT JOIN LATERAL (
              SELECT x.what, x.why FROM paper.void_record x
              WHERE x.record = r.record AND %s ORDER BY x.entry LIMIT 1) v ON e.recorded_at IS NULL
            """.formatted(Known.now("n.entry"), Known.now("x.entry"));

    private static final String RECORDS = BECAME.formatted("paper.printed_record") + " WHERE " + Known.now("r.entry");

    private static final String SHEETS = """
            FROM paper.sheet s JOIN ledger.entry l ON l.number = s.entry JOIN catalog.station st ON st.id = s.station
            LEFT JOIN catalog.item i ON i.id = s.item
            """;

    private static final String COUNTS = """
            SELECT s.code, s.form, st.code AS station, i.number AS item, s.operation, s.printed_at, l.actor AS printed_by,
              count(*) AS printed, count(*) FILTER (WHERE k.entered_at IS NOT NULL) AS entered,
              count(*) FILTER (WHERE k.fate IN ('BLANK', 'SPOILED')) AS voided, count(*) FILTER (WHERE k.fate = 'LOST') AS lost
            %s JOIN (%s) k ON k.entry = s.entry
            GROUP BY s.entry, s.code, s.form, st.code, i.number, s.operation, s.printed_at, l.actor
            ORDER BY count(*) FILTER (WHERE k.entered_at IS NULL AND k.fate IS NULL) = 0, s.printed_at DESC, s.entry DESC
            """.formatted(SHEETS, RECORDS);

    private final JdbcClient jdbc;

    PrintedSheets(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Sheets with their counts, those with open records first and the latest of them first; at most so many. */
    public List<SheetCount> counted(int most) {
        return jdbc.sql(COUNTS + " LIMIT ?")
                .param(most)
                .query(DataClassRowMapper.newInstance(SheetCount.class))
                .list();
    }

    /** How many printed records are neither entered nor void. */
    public long open() {
        return jdbc.sql("SELECT count(*) FROM (" + RECORDS + ") k WHERE k.entered_at IS NULL AND k.fate IS NULL")
                .query(Long.class)
                .single();
    }

    /** The records of a sheet in their order on paper, with what became of each. */
    public List<PrintedRecord> records(String sheet) {
        return jdbc.sql(RECORDS + " AND r.entry IN (SELECT s.entry FROM paper.sheet s WHERE s.code = ?)"
                        + " ORDER BY r.entry, r.ordinal")
                .param(sheet)
                .query(DataClassRowMapper.newInstance(PrintedRecord.class))
                .list();
    }

    /** The sheet of that code, if it was printed and that was not taken back. */
    public Optional<Sheet> sheet(String code) {
        return jdbc.sql(
                        "SELECT s.form, st.code, i.number, s.operation, s.printed_at, l.actor, (SELECT array_agg(r.record"
                                + " ORDER BY r.ordinal) FROM paper.printed_record r WHERE r.entry = s.entry) " + SHEETS
                                + " WHERE s.code = ? AND " + Known.now("s.entry") + " ORDER BY s.entry LIMIT 1")
                .param(code)
                .query((row, number) -> new Sheet(
                        code,
                        FormKind.valueOf(row.getString(1)),
                        row.getString(2),
                        row.getString(3),
                        row.getString(4),
                        row.getObject(5, OffsetDateTime.class),
                        row.getString(6),
                        List.of((String[]) row.getArray(7).getArray())))
                .optional();
    }

    /** What became of one record, whether its sheet is known or not. */
    public PrintedRecord record(RecordId id) {
        return jdbc.sql(BECAME.formatted("(SELECT -1::bigint AS entry, 1 AS ordinal, cast(? AS text) AS record)"))
                .param(id.text())
                .query(DataClassRowMapper.newInstance(PrintedRecord.class))
                .single();
    }
}
