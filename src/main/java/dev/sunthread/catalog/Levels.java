package dev.sunthread.catalog;

import dev.sunthread.ledger.Known;
import java.util.HashMap;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The levels at which units are counted, ordered by what released structures put into what. */
@Repository
public class Levels {

    /** Each step takes a unit into a parent that a structure allows; the bound ends structures that go in a circle. */
    private static final String DEPTHS = """
            WITH RECURSIVE inside AS (
              SELECT DISTINCT r.item AS parent, p.item AS child
              FROM catalog.structure_revision r JOIN catalog.structure_position p USING (entry)
              WHERE %s),
            depth AS (
              SELECT id AS item, 0 AS depth FROM catalog.item WHERE tracking = 'SERIAL'
              UNION
              SELECT i.parent, d.depth + 1 FROM depth d JOIN inside i ON i.child = d.item WHERE d.depth < 50)
            SELECT c.level, max(d.depth) FROM depth d JOIN catalog.item c ON c.id = d.item
            WHERE c.level IS NOT NULL GROUP BY c.level
            """.formatted(Known.at("r.entry"));

    private final JdbcClient jdbc;

    Levels(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** How many levels may lie inside each, by what was released at a cut-off: nought for the innermost. */
    public Map<String, Integer> depths(long cutoff) {
        Map<String, Integer> depths = new HashMap<>();
        jdbc.sql(DEPTHS).param("cutoff", cutoff).query(row -> {
            depths.put(row.getString(1), row.getInt(2));
        });
        return depths;
    }
}
