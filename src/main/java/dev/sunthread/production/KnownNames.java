package dev.sunthread.production;

import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.scan.Likeness;
import java.util.List;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * What is decided about a thing, such as a hold, is about something that a record named before: a name that is only
 * mistyped would leave the true thing without the decision. Lines that are kept in the inbox count as such records.
 */
@Repository
public class KnownNames {

    private static final int MOST = 6;

    private static final String NEW = """
            SELECT EXISTS (SELECT FROM %s t WHERE t.id = :thing AND t.named_by = :entry)
              AND NOT EXISTS (SELECT FROM inbox.line_name n WHERE n.kind = :kind AND n.name = :name)
            """;

    private static final String NEAR = """
            SELECT DISTINCT name FROM (
              (SELECT u.serial AS name FROM production.unit u WHERE %s LIMIT :most)
              UNION ALL (SELECT l.number FROM materials.lot l WHERE %s LIMIT :most)
              UNION ALL (SELECT c.label FROM materials.container c WHERE %s LIMIT :most)) near
            WHERE name <> :name ORDER BY name LIMIT :most
            """.formatted(
                    Likeness.condition("u.serial"), Likeness.condition("l.number"), Likeness.condition("c.label"));

    private final JdbcClient jdbc;

    KnownNames(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Notes or refuses units that nothing named before this. */
    public void ofUnits(Fact<?> fact, Map<Long, UnitName> units) {
        units.forEach((unit, name) -> {
            if (isNew(fact, "production.unit", unit, "unit", name.serial())) {
                isUnknown(fact, "unit " + name, name.serial(), TraceRef.unit(unit));
            }
        });
    }

    /** Notes or refuses a lot that nothing named before this. */
    public void ofLot(Fact<?> fact, long lot, String number) {
        if (isNew(fact, "materials.lot", lot, "lot", number)) {
            isUnknown(fact, "lot " + number, number, TraceRef.lot(lot));
        }
    }

    /** Notes or refuses a container that nothing named before this. */
    public void ofContainer(Fact<?> fact, long container, String label) {
        if (isNew(fact, "materials.container", container, "container", label)) {
            isUnknown(fact, "container " + label, label, TraceRef.container(container));
        }
    }

    private boolean isNew(Fact<?> fact, String table, long thing, String kind, String name) {
        return jdbc.sql(NEW.formatted(table))
                .param("thing", thing)
                .param("entry", fact.entry())
                .param("kind", kind)
                .param("name", name)
                .query(Boolean.class)
                .single();
    }

    private void isUnknown(Fact<?> fact, String what, String name, TraceRef thing) {
        List<String> near = near(name);
        fact.breaks(
                "what-is-decided-on-is-known",
                "No earlier record names " + what,
                near.isEmpty()
                        ? "Correct the name, or record first where it comes from"
                        : "Correct the name, nearly so are called: " + String.join(", ", near)
                                + "; or record first where it comes from",
                thing);
    }

    private List<String> near(String name) {
        return jdbc.sql(NEAR)
                .param("texts", Likeness.spellings(name).toArray(String[]::new))
                .param("name", name)
                .param("most", MOST)
                .query(String.class)
                .list();
    }
}
