package dev.sunthread.web.compare;

import dev.sunthread.kernel.UnitId;
import dev.sunthread.ledger.Known;
import dev.sunthread.web.compare.UnitComparison.LotRow;
import dev.sunthread.web.compare.UnitComparison.Part;
import dev.sunthread.web.compare.UnitComparison.PositionRow;
import dev.sunthread.web.unit.Contents;
import dev.sunthread.web.unit.Inside;
import dev.sunthread.web.unit.KnownStays;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Puts two units side by side, at a cut-off. */
@Repository
class UnitComparisons {

    /** Lots by their scan, or else by what was loaded at the position then, in the unit or anything inside it now. */
    private static final String LOTS = """
            WITH RECURSIVE stay AS NOT MATERIALIZED (%s),
            inside (side, unit) AS (
              SELECT 'left', cast(:left AS bigint) UNION SELECT 'right', cast(:right AS bigint)
              UNION
              SELECT i.side, s.child_unit FROM inside i JOIN stay s ON s.parent = i.unit
              WHERE s.removed_at IS NULL AND s.child_unit IS NOT NULL),
            taken AS (
              SELECT n.side, n.unit, su.lot
              FROM inside n JOIN production.step_unit m ON m.unit = n.unit JOIN production.step t ON t.entry = m.entry
              JOIN production.step_use su ON su.entry = t.entry WHERE su.lot IS NOT NULL AND %s
              UNION
              SELECT n.side, n.unit, h.lot
              FROM inside n JOIN production.step_unit m ON m.unit = n.unit JOIN production.step t ON t.entry = m.entry
              JOIN production.step_use su ON su.entry = t.entry AND su.lot IS NULL
              JOIN materials.loading h ON h.position = su.position AND h.during && tstzrange(t.started_at, t.ended_at, '[]')
              WHERE %s AND %s
              UNION
              SELECT n.side, n.unit, s.child_lot FROM inside n JOIN stay s ON s.parent = n.unit
              WHERE s.removed_at IS NULL AND s.child_lot IS NOT NULL)
            SELECT coalesce((SELECT min(i.number) FROM materials.lot_origin o JOIN catalog.item i ON i.id = o.item
                             WHERE o.lot = l.id AND %s), '') AS item, l.number AS lot,
                   count(DISTINCT k.unit) FILTER (WHERE k.side = 'left') AS "left",
                   count(DISTINCT k.unit) FILTER (WHERE k.side = 'right') AS "right"
            FROM taken k JOIN materials.lot l ON l.id = k.lot GROUP BY l.id, l.number ORDER BY 1, 2
            """.formatted(
                    KnownStays.SQL, Known.at("t.entry"), Known.at("t.entry"), Known.at("h.entry"), Known.at("o.entry"));

    private final Contents contents;
    private final JdbcClient jdbc;

    UnitComparisons(Contents contents, JdbcClient jdbc) {
        this.contents = contents;
        this.jdbc = jdbc;
    }

    UnitComparison of(UnitId leftId, long left, UnitId rightId, long right, long cutoff) {
        return new UnitComparison(
                leftId,
                rightId,
                positions(contents.of(left, cutoff), contents.of(right, cutoff)),
                jdbc.sql(LOTS)
                        .param("left", left)
                        .param("right", right)
                        .param("cutoff", cutoff)
                        .query(DataClassRowMapper.newInstance(LotRow.class))
                        .list());
    }

    static List<PositionRow> positions(List<Inside> left, List<Inside> right) {
        Map<String, Part> leftParts = new LinkedHashMap<>();
        Map<String, Part> rightParts = new LinkedHashMap<>();
        flatten("", left, leftParts);
        flatten("", right, rightParts);
        Set<String> paths = new LinkedHashSet<>(leftParts.keySet());
        paths.addAll(rightParts.keySet());
        List<String> ordered = new ArrayList<>(paths);
        ordered.sort(UnitComparisons::byParts);
        return ordered.stream()
                .map(path -> PositionRow.of(path, leftParts.get(path), rightParts.get(path)))
                .toList();
    }

    private static void flatten(String above, List<Inside> inside, Map<String, Part> parts) {
        for (Inside part : inside) {
            if (part.now()) {
                String path = above.isEmpty() ? part.position() : above + " / " + part.position();
                parts.put(path, new Part(part.level(), part.unit(), part.lot()));
                flatten(path, part.contents(), parts);
            }
        }
    }

    // a position stands above what is inside it, and 2 before 10
    private static int byParts(String one, String other) {
        String[] ones = one.split(" / ");
        String[] others = other.split(" / ");
        for (int i = 0; i < Math.min(ones.length, others.length); i++) {
            int order = ones[i].length() == others[i].length()
                    ? ones[i].compareTo(others[i])
                    : Integer.compare(ones[i].length(), others[i].length());
            if (order != 0) {
                return order;
            }
        }
        return Integer.compare(ones.length, others.length);
    }
}
