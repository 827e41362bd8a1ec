package dev.sunthread.testing;

import java.util.Map;
import java.util.TreeMap;
import org.springframework.jdbc.core.RowCallbackHandler;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Counts the rows of the application's tables. */
public final class Tables {

    private static final String EVERY = """
            SELECT table_schema || '.' || table_name,
              (xpath('/row/c/text()', query_to_xml(format('SELECT count(*) AS c FROM %I.%I', table_schema, table_name),
                false, true, '')))[1]::text::bigint
            FROM information_schema.tables
            WHERE table_type = 'BASE TABLE' AND table_schema NOT IN ('public', 'pg_catalog', 'information_schema')
            """;

    private Tables() {}

    /** The number of rows of every table, by schema and name. */
    public static Map<String, Long> counts(JdbcClient jdbc) {
        Map<String, Long> counts = new TreeMap<>();
        jdbc.sql(EVERY).query((RowCallbackHandler) row -> counts.put(row.getString(1), row.getLong(2)));
        return counts;
    }

    /** The same without what the ledger and the inbox themselves write. */
    public static Map<String, Long> countsOfWhatIsTold(JdbcClient jdbc) {
        Map<String, Long> counts = counts(jdbc);
        counts.keySet().removeIf(table -> table.startsWith("ledger.") || table.startsWith("inbox."));
        return counts;
    }
}
