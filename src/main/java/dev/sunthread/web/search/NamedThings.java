package dev.sunthread.web.search;

import dev.sunthread.kernel.UnitId;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Everything with a label: units, lots, containers, supplier lots by the supplier's text, runs, equipment and carriers. */
@Repository
public class NamedThings {

    private static final int MOST_NEAR = 30;
    private static final String ANY_OF = "= ANY (:texts)";
    private static final String BEGINS = "LIKE :prefix";

    /** What else has a name of its own, in words, and its table. */
    private static final Map<String, String> OTHERS = new TreeMap<>(Map.of(
            "cure run", "cure.run",
            "test run", "electrical.run",
            "equipment", "catalog.equipment",
            "station", "catalog.station",
            "carrier", "production.carrier"));

    private final JdbcClient jdbc;

    NamedThings(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** What is called exactly so, and, if nothing is, what is called nearly so. */
    public SearchPage search(String text) {
        List<Hit> exact = exactly(text);
        return new SearchPage(text, exact, exact.isEmpty() ? near(text) : List.of());
    }

    private List<Hit> exactly(String text) {
        return called(List.of(text), "is called exactly so").toList();
    }

    /** What is called nearly so: other case, nought for O, other leading zeros, or beginning so. */
    public List<Hit> near(String text) {
        return Stream.concat(called(Spellings.of(text), "is spelled nearly so"), beginning(text))
                .filter(hit -> !hit.name().equals(text))
                .collect(java.util.stream.Collectors.toMap(
                        Hit::address, hit -> hit, (first, second) -> first, java.util.LinkedHashMap::new))
                .values()
                .stream()
                .limit(MOST_NEAR)
                .toList();
    }

    private Stream<Hit> called(Collection<String> texts, String why) {
        return all(ANY_OF, texts, "", why);
    }

    private Stream<Hit> beginning(String text) {
        String prefix = text.replace("\\", "\\\\").replace("%", "\\%").replace("_", "\\_") + "%";
        String why = "begins so";
        return all(BEGINS, List.of(), prefix, why);
    }

    private Stream<Hit> all(String condition, Collection<String> texts, String prefix, String why) {
        Stream<Hit> labelled = Stream.of(
                        units(condition, texts, prefix, why),
                        lots(condition, texts, prefix, why),
                        containers(condition, texts, prefix, why),
                        supplierLots(condition, texts, prefix, why))
                .flatMap(List::stream);
        Stream<Hit> others = OTHERS.entrySet().stream()
                .flatMap(other -> others(other.getKey(), other.getValue(), condition, texts, prefix, why));
        return Stream.concat(labelled, others);
    }

    private Stream<Hit> others(
            String what, String table, String condition, Collection<String> texts, String prefix, String why) {
        String sql = "SELECT %s FROM " + table + " WHERE %s ORDER BY 1 LIMIT :most";
        String column = table.endsWith(".run") ? "number" : "code";
        return query(sql.formatted(column, column + " %s"), condition, texts, prefix)
                .query((rs, n) -> new Hit(what, rs.getString(1), Addresses.named(what, rs.getString(1)), why))
                .list()
                .stream();
    }

    private List<Hit> units(String condition, Collection<String> texts, String prefix, String why) {
        return query("""
                        SELECT i.level, i.number, u.serial, u.issuer
                        FROM production.unit u JOIN catalog.item i ON i.id = u.item
                        WHERE u.serial %s ORDER BY u.serial, i.number, u.issuer LIMIT :most
                        """, condition, texts, prefix)
                .query((rs, n) ->
                        unit(rs.getString(1), UnitId.of(rs.getString(4), rs.getString(2), rs.getString(3)), why))
                .list();
    }

    private static Hit unit(String level, UnitId id, String why) {
        return new Hit(level, id.toString(), Addresses.unit(id), why);
    }

    private List<Hit> lots(String condition, Collection<String> texts, String prefix, String why) {
        return query(
                        "SELECT l.number FROM materials.lot l WHERE l.number %s ORDER BY 1 LIMIT :most",
                        condition, texts, prefix)
                .query((rs, n) -> new Hit("lot", rs.getString(1), Addresses.lot(rs.getString(1)), why))
                .list();
    }

    private List<Hit> containers(String condition, Collection<String> texts, String prefix, String why) {
        return query(
                        "SELECT c.label FROM materials.container c WHERE c.label %s ORDER BY 1 LIMIT :most",
                        condition, texts, prefix)
                .query((rs, n) -> new Hit("container", rs.getString(1), Addresses.container(rs.getString(1)), why))
                .list();
    }

    private List<Hit> supplierLots(String condition, Collection<String> texts, String prefix, String why) {
        return query("""
                        SELECT DISTINCT s.supplier_lot FROM materials.receipt_supplier_lot s
                        WHERE s.supplier_lot %s ORDER BY 1 LIMIT :most
                        """, condition, texts, prefix)
                .query((rs, n) -> new Hit("supplier lot", rs.getString(1), Addresses.supplierLot(rs.getString(1)), why))
                .list();
    }

    private JdbcClient.StatementSpec query(String sql, String condition, Collection<String> texts, String prefix) {
        return jdbc.sql(sql.formatted(condition))
                .param("texts", texts.toArray(String[]::new))
                .param("prefix", prefix)
                .param("most", MOST_NEAR);
    }
}
