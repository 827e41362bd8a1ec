package dev.sunthread.genealogy.history;

import dev.sunthread.genealogy.line.LineDoubts;
import dev.sunthread.genealogy.records.LineRecords;
import dev.sunthread.kernel.TraceKind;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Units and places of which more is recorded than one birth and one installation, known or not; read once. What is
 * recorded after the cut-off may be missing, for it contradicts nothing that is known then.
 */
final class DoubtfulPlaces {

    private static final String TWICE = "SELECT b.unit FROM production.birth b GROUP BY b.unit HAVING count(*) > 1";

    private static final String CHILDREN = """
            SELECT t.unit FROM unnest(:twice::bigint[]) t(unit)
            UNION SELECT n.unit FROM unnest(:named::bigint[]) n(unit)
            UNION SELECT i.child_unit FROM production.installation i WHERE i.child_unit IS NOT NULL
            GROUP BY i.child_unit HAVING count(*) > 1
            UNION SELECT r.child_unit FROM production.removal r WHERE r.child_unit IS NOT NULL
            """;

    private static final String PLACES = """
            SELECT i.parent_position FROM production.installation i GROUP BY i.parent_position HAVING count(*) > 1
            UNION SELECT r.parent_position FROM production.removal r WHERE r.parent_position IS NOT NULL
            """;

    private static final String PARENTS = """
            SELECT t.unit FROM unnest(:twice::bigint[]) t(unit)
            UNION SELECT n.unit FROM unnest(:named::bigint[]) n(unit)
            UNION SELECT r.parent FROM production.removal r WHERE r.parent_position IS NULL
            """;

    private final JdbcClient jdbc;
    private final LineRecords lines;
    private @Nullable Map<String, Object> known;

    DoubtfulPlaces(JdbcClient jdbc, LineRecords lines) {
        this.jdbc = jdbc;
        this.lines = lines;
    }

    /**
     * The parameters of {@link SurelyKnown#LASTING}; the units that may be two bodies as {@code twice}; those that kept lines
     * may have worked on, shipped, put into others or taken out as {@code moved}, onto carriers or off as {@code loaded},
     * with these {@code carriers}; and the entries that such lines may take back as {@code takenBack}.
     */
    Map<String, Object> params() {
        if (known == null) {
            Long[] twice = Stream.concat(Arrays.stream(ids(TWICE, new Long[0])), LineDoubts.born(lines.open()).stream())
                    .distinct()
                    .toArray(Long[]::new);
            known = Map.of(
                    "moved",
                    named(TraceKind.UNIT, "installation", "removal", "step", "shipment"),
                    "loaded",
                    named(TraceKind.UNIT, "carrier-load", "carrier-unload"),
                    "carriers",
                    named(TraceKind.CARRIER, "carrier-load", "carrier-unload"),
                    "takenBack",
                    Sql.ids(LineDoubts.takenBack(lines.open())),
                    "twice",
                    twice,
                    "children",
                    ids(CHILDREN, twice),
                    "places",
                    ids(PLACES, twice),
                    "parents",
                    ids(PARENTS, twice),
                    "doubtedFrom",
                    LineDoubts.takenBackFrom(lines.open()));
        }
        return known;
    }

    private Long[] named(TraceKind kind, String... kinds) {
        return lines.open().stream()
                .filter(line -> line.isOfKind(kinds))
                .flatMap(line -> line.parts().stream())
                .filter(part -> part.isOf(kind))
                .map(part -> part.node().id())
                .distinct()
                .toArray(Long[]::new);
    }

    private Long[] ids(String sql, Long[] twice) {
        List<Long> ids = jdbc.sql(sql)
                .param("twice", twice)
                .param("named", named(TraceKind.UNIT, "installation", "removal"))
                .query((row, number) -> row.getLong(1))
                .list();
        return ids.toArray(Long[]::new);
    }
}
