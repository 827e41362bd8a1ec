package dev.sunthread.web.unit;

import dev.sunthread.kernel.UnitId;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What is and was inside a unit, at every depth, read one depth at a time. */
@Repository
public class Contents {

    private static final int DEEPEST = 8;
    private static final int MOST = 5000;

    private final JdbcClient jdbc;

    Contents(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** A stay as read, before it hangs in the tree. */
    private record Row(
            long parent,
            String position,
            @Nullable Long child,
            @Nullable UnitId unit,
            @Nullable String lot,
            String level,
            OffsetDateTime from,
            @Nullable OffsetDateTime until) {

        boolean overlaps(@Nullable OffsetDateTime begin, @Nullable OffsetDateTime end) {
            return (end == null || from.isBefore(end)) && (begin == null || until == null || until.isAfter(begin));
        }
    }

    /** All that is and was inside it at the cut-off; what is inside now first. */
    public List<Inside> of(long unit, long cutoff) {
        Map<Long, List<Row>> byParent = readAllDepths(unit, cutoff);
        return hang(unit, null, null, true, DEEPEST, byParent);
    }

    private Map<Long, List<Row>> readAllDepths(long unit, long cutoff) {
        Map<Long, List<Row>> byParent = new java.util.HashMap<>();
        Collection<Long> parents = List.of(unit);
        int rows = 0;
        for (int depth = 0; depth < DEEPEST && !parents.isEmpty() && rows < MOST; depth++) {
            List<Row> below = read(parents, cutoff);
            rows += below.size();
            below.forEach(row -> byParent.computeIfAbsent(row.parent(), p -> new ArrayList<>())
                    .add(row));
            parents = below.stream()
                    .map(Row::child)
                    .filter(java.util.Objects::nonNull)
                    .filter(child -> !byParent.containsKey(child))
                    .collect(Collectors.toSet());
        }
        return byParent;
    }

    private List<Row> read(Collection<Long> parents, long cutoff) {
        return jdbc.sql("""
                        SELECT s.parent, s.position, s.child_unit, i.number AS item, u.serial, u.issuer, i.level,
                               l.number AS lot, s.installed_at, s.removed_at
                        FROM (%s) s
                        LEFT JOIN production.unit u ON u.id = s.child_unit
                        LEFT JOIN catalog.item i ON i.id = u.item
                        LEFT JOIN materials.lot l ON l.id = s.child_lot
                        WHERE s.parent = ANY (:parents)
                        ORDER BY s.removed_at IS NOT NULL, length(s.position), s.position, s.installed_at DESC
                        """.formatted(KnownStays.SQL))
                .param("cutoff", cutoff)
                .param("parents", parents.toArray(Long[]::new))
                .query((rs, n) -> new Row(
                        rs.getLong("parent"),
                        rs.getString("position"),
                        rs.getObject("child_unit", Long.class),
                        rs.getString("serial") == null
                                ? null
                                : UnitId.of(rs.getString("issuer"), rs.getString("item"), rs.getString("serial")),
                        rs.getString("lot"),
                        rs.getString("level") == null ? "lot" : rs.getString("level"),
                        rs.getObject("installed_at", OffsetDateTime.class),
                        rs.getObject("removed_at", OffsetDateTime.class)))
                .list();
    }

    /** What was below a unit while it was inside itself; a circle of wrong records ends at the deepest level. */
    private static List<Inside> hang(
            @Nullable Long unit,
            @Nullable OffsetDateTime begin,
            @Nullable OffsetDateTime end,
            boolean now,
            int depth,
            Map<Long, List<Row>> byParent) {
        if (unit == null || depth == 0) {
            return List.of();
        }
        return byParent.getOrDefault(unit, List.of()).stream()
                .filter(row -> row.overlaps(begin, end))
                .map(row -> {
                    boolean inside = now && row.until() == null;
                    List<Inside> below = hang(row.child(), row.from(), row.until(), inside, depth - 1, byParent);
                    return new Inside(
                            row.position(),
                            row.unit(),
                            row.lot(),
                            row.level(),
                            row.from(),
                            row.until(),
                            inside,
                            null,
                            below);
                })
                .toList();
    }
}
