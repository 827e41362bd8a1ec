package dev.sunthread.station.work;

import dev.sunthread.catalog.Demand;
import dev.sunthread.catalog.Items;
import dev.sunthread.catalog.RouteStep;
import dev.sunthread.catalog.RouteSteps;
import dev.sunthread.catalog.StructurePlace;
import dev.sunthread.catalog.Structures;
import dev.sunthread.kernel.UnitId;
import dev.sunthread.ledger.Known;
import dev.sunthread.production.UnitName;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What routes and structures in force say of a unit, and what of it is done. */
@Repository
class StationRoutes {

    private static final String UNIT = "(SELECT u.id FROM production.unit u JOIN catalog.item n ON n.id = u.item"
            + " WHERE n.number = :item AND u.serial = :serial AND u.issuer = :issuer)";

    private final Items items;
    private final RouteSteps steps;
    private final Structures structures;
    private final JdbcClient jdbc;

    StationRoutes(Items items, RouteSteps steps, Structures structures, JdbcClient jdbc) {
        this.items = items;
        this.steps = steps;
        this.structures = structures;
        this.jdbc = jdbc;
    }

    /** The operations of an item's route in their order. */
    List<RouteStep> steps(String item, OffsetDateTime at) {
        return items.find(item).map(known -> steps.of(known.id(), at)).orElse(List.of());
    }

    /** The positions of an item's units in their order. */
    List<StructurePlace> places(String item, OffsetDateTime at) {
        return items.find(item)
                .map(known -> structures.placesOf(known.id(), at))
                .orElse(List.of());
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
                .query((row, number) -> UnitName.of(UnitId.of(row.getString(3), row.getString(1), row.getString(2))))
                .list();
    }

    /** The lowest number of a position of a carrier at which nothing is recorded now. */
    int freeOn(String carrier) {
        Set<String> taken =
                new TreeSet<>(jdbc.sql("""
                        SELECT c.position FROM production.carrier k JOIN production.carrying c ON c.carrier = k.id
                        WHERE k.code = ? AND upper_inf(c.during) AND c.position IS NOT NULL
                        """).param(carrier).query(String.class).list());
        int free = 1;
        while (taken.contains(String.valueOf(free))) {
            free++;
        }
        return free;
    }

    /** The recipes that the routes of these items demand. */
    Set<String> recipes(Set<String> numbers, OffsetDateTime at) {
        return numbers.stream()
                .flatMap(number -> steps(number, at).stream())
                .flatMap(step -> step.demands().stream())
                .filter(demand -> demand.way() == Demand.Way.CURE)
                .map(Demand::code)
                .collect(Collectors.toCollection(TreeSet::new));
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
