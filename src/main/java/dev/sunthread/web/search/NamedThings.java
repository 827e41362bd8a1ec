package dev.sunthread.web.search;

import dev.sunthread.kernel.UnitId;
import dev.sunthread.scan.Likeness;
import dev.sunthread.scan.ScanChoice;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Everything with a label: units, lots, containers, supplier lots by the supplier's text, runs, equipment and carriers. */
@Repository
public class NamedThings {

    private static final int MOST_NEAR = 30;
    private static final UnaryOperator<String> ANY_OF = column -> column + " = ANY (:texts)";
    private static final UnaryOperator<String> BEGINS = column -> column + " LIKE :prefix";
    private static final UnaryOperator<String> LIKELY = Likeness::condition;

    /** What else has a name of its own, in words, and its table. */
    private static final Map<String, String> OTHERS = new TreeMap<>(Map.of(
            "cure run", "cure.run",
            "test run", "electrical.run",
            "equipment", "catalog.equipment",
            "station", "catalog.station",
            "carrier", "production.carrier"));

    private static final Map<String, ScanChoice.What> TAKEN_FOR = Map.of(
            "lot", ScanChoice.What.LOT,
            "supplier lot", ScanChoice.What.SUPPLIER_LOT,
            "container", ScanChoice.What.CONTAINER,
            "carrier", ScanChoice.What.CARRIER,
            "station", ScanChoice.What.STATION,
            "position", ScanChoice.What.POSITION);

    private final JdbcClient jdbc;

    NamedThings(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** What is called exactly so, and, if nothing is, what is called nearly so. */
    public SearchPage search(String text) {
        List<Hit> exact = exactly(text);
        return new SearchPage(text, exact, exact.isEmpty() ? near(text) : List.of(), null, List.of());
    }

    /** What is called exactly so. */
    List<Hit> exactly(String text) {
        return all(ANY_OF, List.of(text), "", name -> "is called exactly so").toList();
    }

    /** What is called nearly so, whatever it is easily taken for, or begins so. */
    public List<Hit> near(String text) {
        return Stream.concat(likely(text), beginning(text))
                .filter(hit -> !hit.name().equals(text))
                .collect(Collectors.toMap(
                        Hit::address, hit -> hit, (first, second) -> first, java.util.LinkedHashMap::new))
                .values()
                .stream()
                .limit(MOST_NEAR)
                .toList();
    }

    private Stream<Hit> likely(String text) {
        return all(LIKELY, Likeness.spellings(text), "", name -> "is spelled nearly so" + differences(text, name));
    }

    private static String differences(String text, String name) {
        String words =
                Likeness.between(text, name).stream().map(Likeness::words).collect(Collectors.joining(", "));
        return words.isEmpty() ? "" : "; other in " + words;
    }

    private Stream<Hit> beginning(String text) {
        String prefix = text.replace("\\", "\\\\").replace("%", "\\%").replace("_", "\\_") + "%";
        return all(BEGINS, List.of(), prefix, name -> "begins so");
    }

    private Stream<Hit> all(
            UnaryOperator<String> condition, Collection<String> texts, String prefix, UnaryOperator<String> why) {
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
            String what,
            String table,
            UnaryOperator<String> condition,
            Collection<String> texts,
            String prefix,
            UnaryOperator<String> why) {
        String column = table.endsWith(".run") ? "number" : "code";
        String sql = "SELECT " + column + " FROM " + table + " WHERE %s ORDER BY 1 LIMIT :most";
        return query(sql, condition.apply(column), texts, prefix)
                .query((rs, n) -> hit(what, rs.getString(1), Addresses.named(what, rs.getString(1)), why))
                .list()
                .stream();
    }

    private List<Hit> units(
            UnaryOperator<String> condition, Collection<String> texts, String prefix, UnaryOperator<String> why) {
        return query("""
                        SELECT i.level, i.number, u.serial, u.issuer
                        FROM production.unit u JOIN catalog.item i ON i.id = u.item
                        WHERE %s ORDER BY u.serial, i.number, u.issuer LIMIT :most
                        """, condition.apply("u.serial"), texts, prefix)
                .query((rs, n) ->
                        unit(rs.getString(1), UnitId.of(rs.getString(4), rs.getString(2), rs.getString(3)), why))
                .list();
    }

    private static Hit unit(String level, UnitId id, UnaryOperator<String> why) {
        var taken = new ScanChoice("", ScanChoice.What.UNIT, id.serial(), id.item(), issuer(id));
        return new Hit(level, id.toString(), Addresses.unit(id), why.apply(id.serial()), taken);
    }

    private static @Nullable String issuer(UnitId id) {
        return id.issuer().equals(UnitId.THIS_PLANT) ? null : id.issuer();
    }

    private static Hit hit(String what, String name, String address, UnaryOperator<String> why) {
        var taken = new ScanChoice("", TAKEN_FOR.getOrDefault(what, ScanChoice.What.OTHER), name, null, null);
        return new Hit(what, name, address, why.apply(name), taken);
    }

    private List<Hit> lots(
            UnaryOperator<String> condition, Collection<String> texts, String prefix, UnaryOperator<String> why) {
        return query(
                        "SELECT l.number FROM materials.lot l WHERE %s ORDER BY 1 LIMIT :most",
                        condition.apply("l.number"), texts, prefix)
                .query((rs, n) -> hit("lot", rs.getString(1), Addresses.lot(rs.getString(1)), why))
                .list();
    }

    private List<Hit> containers(
            UnaryOperator<String> condition, Collection<String> texts, String prefix, UnaryOperator<String> why) {
        return query(
                        "SELECT c.label FROM materials.container c WHERE %s ORDER BY 1 LIMIT :most",
                        condition.apply("c.label"), texts, prefix)
                .query((rs, n) -> hit("container", rs.getString(1), Addresses.container(rs.getString(1)), why))
                .list();
    }

    private List<Hit> supplierLots(
            UnaryOperator<String> condition, Collection<String> texts, String prefix, UnaryOperator<String> why) {
        return query("""
                        SELECT DISTINCT s.supplier_lot FROM materials.receipt_supplier_lot s
                        WHERE %s ORDER BY 1 LIMIT :most
                        """, condition.apply("s.supplier_lot"), texts, prefix)
                .query((rs, n) -> hit("supplier lot", rs.getString(1), Addresses.supplierLot(rs.getString(1)), why))
                .list();
    }

    /** The position of that code on a station. */
    Optional<Hit> position(String station, String code) {
        return jdbc.sql("""
                        SELECT 1 FROM catalog.position p JOIN catalog.station s ON s.id = p.station
                        WHERE s.code = ? AND p.code = ?
                        """)
                .params(station, code)
                .query((rs, n) -> hit(
                        "position",
                        station + " " + code,
                        Addresses.position(station, code),
                        name -> "is called exactly so"))
                .optional();
    }

    private JdbcClient.StatementSpec query(String sql, String condition, Collection<String> texts, String prefix) {
        return jdbc.sql(sql.formatted(condition))
                .param("texts", texts.toArray(String[]::new))
                .param("prefix", prefix)
                .param("most", MOST_NEAR);
    }
}
