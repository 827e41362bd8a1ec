package dev.sunthread.ledger;

import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.LongSummaryStatistics;
import java.util.Map;
import java.util.function.Function;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Makes the entries of a restore, many at once, and readies the database for as many. */
@Repository
public class RestoredEntries {

    private static final String OPEN_ALL = """
            INSERT INTO ledger.entry
              (id, kind, kind_version, occurred_at, recorded_at, recorded_by, actor, source, envelope, hash)
            SELECT id, kind, version, cast(occurred_at AS timestamptz), cast(recorded_at AS timestamptz), recorded_by, actor,
              source, envelope, hash
            FROM unnest(?, ?, ?, ?, ?, ?, ?, ?, ?, ?) WITH ORDINALITY AS e
              (id, kind, version, occurred_at, recorded_at, recorded_by, actor, source, envelope, hash, ordinal)
            ORDER BY ordinal ON CONFLICT (id) DO NOTHING RETURNING id, number
            """;

    /* Statements are planned once, by indexes alone: to plan each execution anew takes longer than to execute it. */
    private static final String EXPECT_MANY = """
            SELECT set_config(name, setting, true) FROM (VALUES
              ('plan_cache_mode', 'force_generic_plan'), ('enable_seqscan', 'off'), ('enable_hashjoin', 'off'),
              ('enable_mergejoin', 'off'), ('jit', 'off')) AS s (name, setting)
            """;

    private final JdbcClient jdbc;

    RestoredEntries(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /**
     * Opens entries in their order, for which history can be written until the next are opened; gives the number of each
     * whose id was not known.
     */
    Map<String, Long> openAll(List<Restoration.Entered> next) {
        Map<String, Long> opened = new HashMap<>();
        jdbc.sql(OPEN_ALL)
                .param(column(next, String[]::new, one -> one.envelope().id()))
                .param(column(next, String[]::new, one -> one.envelope().head().kind()))
                .param(column(next, Integer[]::new, one -> one.envelope().head().version()))
                .param(column(next, String[]::new, one -> exact(one.envelope().occurredAt())))
                .param(column(next, String[]::new, one -> exact(one.recorded().at())))
                .param(column(next, String[]::new, one -> one.recorded().by()))
                .param(column(next, String[]::new, one -> one.envelope().head().actor()))
                .param(column(next, String[]::new, one -> one.envelope().head().source()))
                .param(column(next, String[]::new, one -> one.envelope().canonical()))
                .param(column(next, byte[][]::new, one -> one.envelope().hash()))
                .query(row -> {
                    opened.put(row.getString(1), row.getLong(2));
                });
        letHistoryBeWrittenFor(opened.values());
        return opened;
    }

    private void letHistoryBeWrittenFor(Collection<Long> opened) {
        LongSummaryStatistics numbers =
                opened.stream().mapToLong(Long::longValue).summaryStatistics();
        String range = opened.isEmpty() ? "" : "[" + numbers.getMin() + "," + numbers.getMax() + "]";
        jdbc.sql("SELECT set_config('sunthread.restored', ?, true)")
                .param(range)
                .query(String.class)
                .single();
    }

    private static <T> T[] column(
            List<Restoration.Entered> rows, IntFunction<T[]> array, Function<Restoration.Entered, @Nullable T> value) {
        return rows.stream().map(value).toArray(array);
    }

    private static String exact(OffsetDateTime at) {
        return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(at);
    }

    /** Gives entries the positions they had in another database, in their order, and closes the last. */
    void closeAt(List<Long> entries, long firstPosition) {
        jdbc.sql(Entries.CLOSE.formatted("""
                        ledger.position (entry, position)
                        SELECT e.entry, ? + e.ordinal - 1 FROM unnest(?) WITH ORDINALITY AS e (entry, ordinal)
                        """))
                .params(firstPosition, entries.toArray(Long[]::new))
                .query()
                .listOfRows();
    }

    /** Prepares the current transaction for recording far more than the database holds. */
    void expectMany() {
        jdbc.sql(EXPECT_MANY).query().listOfRows();
    }

    /** Tells the database anew how much there is of what, and has it plan every statement anew. */
    public void countAnew() {
        jdbc.sql("ANALYZE").update();
        jdbc.sql("DISCARD PLANS").update();
    }
}
