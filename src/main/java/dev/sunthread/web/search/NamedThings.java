package dev.sunthread.web.search;

import dev.sunthread.kernel.UnitId;
import dev.sunthread.scan.ScanChoice;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Everything with a label: units, lots, containers, supplier lots by the supplier's text, runs, equipment and carriers. */
@Repository
public class NamedThings {

    private static final int MOST_NEAR = 30;

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
        return all(Asked.exactly(text)).toList();
    }

    /** What is called nearly so, whatever it is easily taken for, or begins so. */
    public List<Hit> near(String text) {
        return Stream.concat(all(Asked.likely(text)), all(Asked.beginning(text)))
                .filter(hit -> !hit.name().equals(text))
                .collect(Collectors.toMap(
                        Hit::address, hit -> hit, (first, second) -> first, java.util.LinkedHashMap::new))
                .values()
                .stream()
                .limit(MOST_NEAR)
                .toList();
    }

    private Stream<Hit> all(Asked asked) {
        Stream<Hit> labelled = Stream.of(units(asked), lots(asked), containers(asked), supplierLots(asked))
                .flatMap(List::stream);
        Stream<Hit> others =
                OTHERS.entrySet().stream().flatMap(other -> others(other.getKey(), other.getValue(), asked));
        return Stream.concat(labelled, others);
    }

    private Stream<Hit> others(String what, String table, Asked asked) {
        String column = table.endsWith(".run") ? "number" : "code";
        String sql = "SELECT " + column + " FROM " + table + " WHERE %s ORDER BY 1 LIMIT :most";
        return query(sql, asked, column)
                .query((rs, n) -> hit(what, rs.getString(1), Addresses.named(what, rs.getString(1)), asked::why))
                .list()
                .stream();
    }

    private List<Hit> units(Asked asked) {
        return query("""
                        SELECT i.level, i.number, u.serial, u.issuer
                        FROM production.unit u JOIN catalog.item i ON i.id = u.item
                        WHERE %s ORDER BY u.serial, i.number, u.issuer LIMIT :most
                        """, asked, "u.serial")
                .query((rs, n) ->
                        unit(rs.getString(1), UnitId.of(rs.getString(4), rs.getString(2), rs.getString(3)), asked::why))
                .list();
    }

    private static Hit unit(String level, UnitId id, UnaryOperator<String> why) {
        var taken = new ScanChoice("", ScanChoice.What.UNIT, id.serial(), id.item(), id.otherIssuer());
        return new Hit(level, id.toString(), Addresses.unit(id), why.apply(id.serial()), taken);
    }

    private static Hit hit(String what, String name, String address, UnaryOperator<String> why) {
        var taken = new ScanChoice("", TAKEN_FOR.getOrDefault(what, ScanChoice.What.OTHER), name, null, null);
        return new Hit(what, name, address, why.apply(name), taken);
    }

    private List<Hit> lots(Asked asked) {
        return query("SELECT l.number FROM materials.lot l WHERE %s ORDER BY 1 LIMIT :most", asked, "l.number")
                .query((rs, n) -> hit("lot", rs.getString(1), Addresses.lot(rs.getString(1)), asked::why))
                .list();
    }

    private List<Hit> containers(Asked asked) {
        return query("SELECT c.label FROM materials.container c WHERE %s ORDER BY 1 LIMIT :most", asked, "c.label")
                .query((rs, n) -> hit("container", rs.getString(1), Addresses.container(rs.getString(1)), asked::why))
                .list();
    }

    private List<Hit> supplierLots(Asked asked) {
        return query("""
                        SELECT DISTINCT s.supplier_lot FROM materials.receipt_supplier_lot s
                        WHERE %s ORDER BY 1 LIMIT :most
                        """, asked, "s.supplier_lot")
                .query((rs, n) ->
                        hit("supplier lot", rs.getString(1), Addresses.supplierLot(rs.getString(1)), asked::why))
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

    private JdbcClient.StatementSpec query(String sql, Asked asked, String column) {
        return jdbc.sql(sql.formatted(asked.on(column)))
                .param("texts", asked.texts().toArray(String[]::new))
                .param("prefix", asked.prefix())
                .param("most", MOST_NEAR);
    }
}
