package dev.sunthread.genealogy.history;

import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.Collection;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** How rows and times of the database read here. */
public final class Sql {

    /**
     * Whether the container of a use {@code u} in a step {@code s} surely was filled by then as it is told: no filling of it
     * and that step may have come in another order, for their times lie in one spell that proves none.
     */
    static final String HELD_SURELY = """
            NOT EXISTS (
              SELECT FROM quality.unproven_time x JOIN materials.container_filling g
                ON g.container = u.container AND g.filled_at BETWEEN x.since AND x.until
              WHERE s.ended_at BETWEEN x.since AND x.until AND %s AND %s)
            """.formatted(Known.at("x.entry"), Known.at("g.entry"));

    private Sql() {}

    /** The column in microseconds since 1970-01-01T00:00Z. */
    public static String micros(String column) {
        return "(extract(epoch FROM " + column + ") * 1000000)::bigint";
    }

    static @Nullable Long optional(ResultSet row, int column) throws SQLException {
        long value = row.getLong(column);
        return row.wasNull() ? null : value;
    }

    public static Set<Long> numbers(ResultSet row, int column) throws SQLException {
        var array = row.getArray(column);
        return array == null
                ? Set.of()
                : Arrays.stream((Long[]) array.getArray()).collect(Collectors.toSet());
    }

    public static Long[] ids(Collection<TraceRef> nodes, TraceKind kind) {
        return nodes.stream()
                .filter(node -> node.kind() == kind)
                .map(TraceRef::id)
                .distinct()
                .toArray(Long[]::new);
    }

    public static Long[] ids(Collection<Long> numbers) {
        return numbers.stream().distinct().toArray(Long[]::new);
    }
}
