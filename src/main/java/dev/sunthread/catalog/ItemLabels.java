package dev.sunthread.catalog;

import dev.sunthread.kernel.SerialPattern;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What labels hold of items: what their serials look like, and the numbers that others give them. */
@Repository
public class ItemLabels {

    /** What the serials of an item look like by one of its revisions. */
    public record Pattern(String item, SerialPattern pattern) {}

    private final JdbcClient jdbc;

    ItemLabels(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Every pattern of every item; one that a later revision changed still reads what was printed before. */
    public List<Pattern> patterns() {
        return jdbc.sql("""
                        SELECT i.number, r.serial_pattern FROM catalog.item_revision r JOIN catalog.item i ON i.id = r.item
                        WHERE r.serial_pattern IS NOT NULL GROUP BY 1, 2 ORDER BY 1, min(r.entry)
                        """)
                .query((row, number) -> new Pattern(row.getString(1), new SerialPattern(row.getString(2))))
                .list();
    }

    /** The latest pattern of each item that has one. */
    public Map<String, SerialPattern> latestPatterns() {
        Map<String, SerialPattern> latest = new java.util.TreeMap<>();
        jdbc.sql("""
                        SELECT DISTINCT ON (i.number) i.number, r.serial_pattern
                        FROM catalog.item_revision r JOIN catalog.item i ON i.id = r.item
                        WHERE r.serial_pattern IS NOT NULL ORDER BY i.number, r.entry DESC
                        """).query(row -> {
            latest.put(row.getString(1), new SerialPattern(row.getString(2)));
        });
        return latest;
    }

    /** The items that have this number or are given it by others, by the item's own number. */
    public List<String> called(String number) {
        return jdbc.sql("""
                        SELECT i.number FROM catalog.item i WHERE i.number = :number
                        UNION
                        SELECT i.number FROM catalog.item_label_number n JOIN catalog.item i ON i.id = n.item
                        WHERE n.number = :number ORDER BY 1
                        """).param("number", number).query(String.class).list();
    }

    void keep(long entry, long item, List<String> numbers) {
        for (String number : new HashSet<>(numbers)) {
            jdbc.sql("INSERT INTO catalog.item_label_number (entry, item, number) VALUES (?, ?, ?)")
                    .params(entry, item, number)
                    .update();
        }
    }
}
