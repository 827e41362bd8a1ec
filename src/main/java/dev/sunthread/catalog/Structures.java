package dev.sunthread.catalog;

import dev.sunthread.ledger.Remembered;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.RowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Released structures and routes, as in force at a time. */
@Repository
public class Structures {

    /** What a released definition says of a place or operation of an item. */
    public enum Allowed {
        YES,
        NO,
        NOTHING_RELEASED
    }

    private final RowMapper<Item> items = DataClassRowMapper.newInstance(Item.class);
    private final Revisions revisions;
    private final Remembered remembered;
    private final JdbcClient jdbc;

    Structures(Revisions revisions, Remembered remembered, JdbcClient jdbc) {
        this.revisions = revisions;
        this.remembered = remembered;
        this.jdbc = jdbc;
    }

    /** Whether a unit of the parent item has this position and takes the child item there. */
    public Allowed places(long parentItem, String position, long childItem, OffsetDateTime at) {
        return revisions
                .inForce("structure_revision", parentItem, at)
                .map(entry -> exists(
                        "SELECT 1 FROM catalog.structure_position WHERE entry = ? AND position = ? AND item = ?",
                        entry,
                        position,
                        childItem))
                .orElse(Allowed.NOTHING_RELEASED);
    }

    /** The positions of a unit of the item, or the components of a lot, in their order; none if nothing is released. */
    public List<StructurePlace> placesOf(long item, OffsetDateTime at) {
        return revisions
                .inForce("structure_revision", item, at)
                .map(revision -> remembered
                        .<Long, List<StructurePlace>>of("structure places")
                        .computeIfAbsent(revision, this::read))
                .orElse(List.of());
    }

    private List<StructurePlace> read(long revision) {
        Map<String, List<Item>> places = new LinkedHashMap<>();
        jdbc.sql("""
                        SELECT p.position, i.id, i.number, i.tracking, i.level, i.unit_of_measure
                        FROM catalog.structure_position p JOIN catalog.item i ON i.id = p.item
                        WHERE p.entry = ? ORDER BY p.ordinal, p.position, i.number
                        """)
                .param(revision)
                .query((row, number) -> places.computeIfAbsent(row.getString("position"), any -> new ArrayList<>())
                        .add(items.mapRow(row, number)))
                .list();
        return places.entrySet().stream()
                .map(place -> new StructurePlace(place.getKey(), List.copyOf(place.getValue())))
                .toList();
    }

    /** Whether the route of the item has this operation. */
    public Allowed operates(long item, String operation, OffsetDateTime at) {
        return revisions
                .inForce("route_revision", item, at)
                .map(entry -> exists(
                        "SELECT 1 FROM catalog.route_operation WHERE entry = ? AND operation = ?", entry, operation))
                .orElse(Allowed.NOTHING_RELEASED);
    }

    /** A revision never changes once it is released, so each question is asked once per transaction. */
    private Allowed exists(String sql, Object... params) {
        return remembered.<List<Object>, Allowed>of(sql).computeIfAbsent(List.of(params), asked -> {
            boolean found =
                    jdbc.sql(sql).params(asked).query(Integer.class).optional().isPresent();
            return found ? Allowed.YES : Allowed.NO;
        });
    }
}
