package dev.sunthread.station.work;

import dev.sunthread.kernel.UnitId;
import dev.sunthread.ledger.Known;
import dev.sunthread.production.UnitName;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What routes and structures in force say of a unit, and what of it is done. */
@Repository
class Routes {

    private static final String IN_FORCE = """
            SELECT r.entry FROM catalog.%s r JOIN catalog.item built ON built.id = r.item
            WHERE built.number = :item AND r.effective_at <= :at ORDER BY r.effective_at DESC, r.entry DESC LIMIT 1
            """;

    private static final String CONSUMES = """
            SELECT c.operation, i.number, a.number FROM catalog.route_consumption c JOIN catalog.item i ON i.id = c.item
            LEFT JOIN catalog.route_alternate o ON o.entry = c.entry AND o.operation = c.operation AND o.item = c.item
            LEFT JOIN catalog.item a ON a.id = o.alternate
            WHERE c.entry = (%s) ORDER BY c.operation, i.number
            """.formatted(IN_FORCE.formatted("route_revision"));

    private static final String UNIT =
            "(SELECT u.id FROM production.unit u JOIN catalog.item n ON n.id = u.item"
                    + " WHERE n.number = :item AND u.serial = :serial AND u.issuer = :issuer)";

    private final JdbcClient jdbc;

    Routes(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The operations of an item's route in their order. */
    List<Step> steps(String item, String station, OffsetDateTime at) {
        Map<String, Map<String, Set<String>>> consumes = new LinkedHashMap<>();
        jdbc.sql(CONSUMES).param("item", item).param("at", at).query(row -> {
            Set<String> accepted = consumes.computeIfAbsent(row.getString(1), any -> new TreeMap<>())
                    .computeIfAbsent(row.getString(2), any -> new LinkedHashSet<>());
            accepted.add(row.getString(2));
            if (row.getString(3) != null) {
                accepted.add(row.getString(3));
            }
        });
        return jdbc.sql("SELECT operation, name FROM catalog.route_operation WHERE entry = ("
                        + IN_FORCE.formatted("route_revision") + ") ORDER BY sequence")
                .param("item", item)
                .param("at", at)
                .query((row, number) -> new Step(
                        row.getString(1),
                        row.getString(2),
                        new ArrayList<>(consumes.getOrDefault(row.getString(1), Map.of())
                                .values()),
                        true,
                        true,
                        List.of(),
                        false))
                .list();
    }

    /** The positions of an item's units, in the order in which people count them. */
    List<Place> places(String item, OffsetDateTime at) {
        Map<String, Set<String>> places = new LinkedHashMap<>();
        jdbc.sql("SELECT p.position, i.number FROM catalog.structure_position p JOIN catalog.item i ON i.id = p.item"
                        + " WHERE p.entry = (" + IN_FORCE.formatted("structure_revision") + ") ORDER BY length(p.position), p.position")
                .param("item", item)
                .param("at", at)
                .query(row -> {
                    places.computeIfAbsent(row.getString(1), any -> new TreeSet<>())
                            .add(row.getString(2));
                });
        return places.entrySet().stream()
                .map(place -> new Place(place.getKey(), place.getValue()))
                .toList();
    }

    /** The positions of a unit in which something is now. */
    Set<String> filled(UnitName unit) {
        return names("""
                SELECT pp.position FROM production.stay s JOIN production.parent_position pp ON pp.id = s.parent_position
                WHERE pp.parent = %s AND s.applied AND upper_inf(s.during)
                """.formatted(UNIT), unit);
    }

    /** The operations that were done on a unit. */
    Set<String> done(UnitName unit) {
        return names("""
                SELECT DISTINCT s.operation FROM production.step s JOIN production.step_unit w USING (entry)
                WHERE w.unit = %s AND %s
                """.formatted(UNIT, Known.now("s.entry")), unit);
    }

    /** The units that are on a carrier now, and those on carriers on it. */
    List<UnitName> on(String carrier) {
        return jdbc.sql("""
                        WITH RECURSIVE inside (id) AS (
                          SELECT id FROM production.carrier WHERE code = ?
                          UNION SELECT c.inner_carrier FROM inside x JOIN production.carrying c ON c.carrier = x.id
                          WHERE c.inner_carrier IS NOT NULL AND upper_inf(c.during))
                        SELECT i.number, u.serial, u.issuer FROM inside x
                        JOIN production.carrying c ON c.carrier = x.id AND upper_inf(c.during)
                        JOIN production.unit u ON u.id = c.unit JOIN catalog.item i ON i.id = u.item
                        ORDER BY i.number, u.serial
                        """)
                .param(carrier)
                .query((row, number) -> new UnitName(
                        row.getString(1),
                        row.getString(2),
                        row.getString(3).equals(UnitId.THIS_PLANT) ? null : row.getString(3)))
                .list();
    }

    /** The recipes that the routes of these items demand. */
    Set<String> recipes(Set<String> items, OffsetDateTime at) {
        Set<String> recipes = new TreeSet<>();
        items.forEach(item -> recipes.addAll(jdbc.sql("SELECT DISTINCT c.code FROM catalog.route_demand d"
                        + " JOIN catalog.recipe c ON c.id = d.recipe WHERE d.entry = ("
                        + IN_FORCE.formatted("route_revision") + ")")
                .param("item", item)
                .param("at", at)
                .query(String.class)
                .list()));
        return recipes;
    }

    private Set<String> names(String sql, UnitName unit) {
        return new TreeSet<>(jdbc.sql(sql)
                .param("item", unit.item())
                .param("serial", unit.serial())
                .param("issuer", unit.issuer() == null ? UnitId.THIS_PLANT : unit.issuer())
                .query(String.class)
                .list());
    }
}
