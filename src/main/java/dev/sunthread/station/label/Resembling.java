package dev.sunthread.station.label;

import dev.sunthread.scan.Likeness;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Finds units, lots and containers whose label is easily taken for another text. */
@Repository
public class Resembling {

    private static final int MOST = 6;

    private static final String ALIKE = """
            (SELECT 'unit' AS what, u.serial AS name, i.number AS item
             FROM production.unit u JOIN catalog.item i ON i.id = u.item WHERE %s LIMIT :most)
            UNION ALL (SELECT 'lot', l.number, NULL FROM materials.lot l WHERE %s LIMIT :most)
            UNION ALL (SELECT 'container', c.label, NULL FROM materials.container c WHERE %s LIMIT :most)
            """.formatted(
                    Likeness.condition("u.serial"), Likeness.condition("l.number"), Likeness.condition("c.label"));

    /**
     * What resembles a text.
     *
     * @param what unit, lot or container
     * @param item of a unit
     * @param differences in what the two differ
     */
    public record Alike(String what, String name, @Nullable String item, List<Likeness> differences) {

        /** In what the two differ, in words. */
        public String words() {
            return differences.stream().map(Likeness::words).collect(Collectors.joining(", "));
        }
    }

    private final JdbcClient jdbc;

    Resembling(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** What is called nearly so, and not exactly so; at most six. */
    public List<Alike> to(String text) {
        return jdbc.sql("SELECT what, name, item FROM (" + ALIKE + ") x WHERE name <> :text ORDER BY 1, 2 LIMIT :most")
                .param("texts", Likeness.spellings(text).toArray(String[]::new))
                .param("text", text)
                .param("most", MOST)
                .query((row, number) -> new Alike(
                        row.getString(1), row.getString(2), row.getString(3), Likeness.between(text, row.getString(2))))
                .list();
    }
}
