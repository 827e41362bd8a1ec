package dev.sunthread.web.unit;

import dev.sunthread.kernel.UnitId;
import dev.sunthread.ledger.Known;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads a unit's surroundings at a cut-off: its parents, its place, its shipments, the material in it. */
@Repository
class UnitReading {

    private static final int HIGHEST = 8;

    private static final String SEEN = """
            SELECT format('shipped to %%s, shipment %%s', s.consignee, s.number) AS place, s.shipped_at AS at, s.entry
            FROM production.shipment_unit su JOIN production.shipment s USING (entry)
            WHERE su.unit = :unit AND %s
            UNION ALL
            SELECT 'in the plant, back from ' || r.consignee, r.returned_at, r.entry
            FROM production.unit_return r WHERE r.unit = :unit AND %s
            UNION ALL
            SELECT 'scrapped: ' || x.why, x.scrapped_at, x.entry
            FROM production.scrapping x WHERE x.unit = :unit AND %s
            UNION ALL
            SELECT 'in the plant, put on carrier ' || c.code, l.loaded_at, l.entry
            FROM production.carrier_load l JOIN production.carrier c ON c.id = l.carrier WHERE l.unit = :unit AND %s
            UNION ALL
            SELECT 'in the plant, taken off carrier ' || c.code, o.unloaded_at, o.entry
            FROM production.carrier_unload o JOIN production.carrier c ON c.id = o.carrier WHERE o.unit = :unit AND %s
            UNION ALL
            SELECT 'in the plant, last cured in ' || q.code, d.ended_at, d.entry
            FROM cure.run_unit m JOIN cure.run_record d USING (entry) JOIN catalog.equipment q ON q.id = d.equipment
            WHERE m.unit = :unit AND %s
            UNION ALL
            SELECT 'in the plant, last tested on ' || q.code, t.ended_at, t.entry
            FROM electrical.run_record t JOIN catalog.equipment q ON q.id = t.equipment WHERE t.unit = :unit AND %s
            UNION ALL
            SELECT 'in the plant, last seen at ' || st.code, s.ended_at, s.entry
            FROM production.step_unit su JOIN production.step s USING (entry) JOIN catalog.station st ON st.id = s.station
            WHERE su.unit = :unit AND %s
            UNION ALL
            SELECT 'in the plant, last seen ' || coalesce('at ' || st.code, 'at its birth'), b.born_at, b.entry
            FROM production.birth b LEFT JOIN catalog.station st ON st.id = b.station
            WHERE b.unit = :unit AND %s
            ORDER BY at DESC, entry DESC LIMIT 1
            """.formatted(Stream.of("s", "r", "x", "l", "o", "d", "t", "s", "b")
            .map(table -> Known.at(table + ".entry"))
            .toArray());

    private final JdbcClient jdbc;

    UnitReading(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The level and the latest name of the unit's item. */
    String[] levelAndName(long unit, long cutoff) {
        return jdbc.sql("""
                        SELECT i.level, coalesce((
                          SELECT r.name || ', revision ' || r.revision FROM catalog.item_revision r
                          WHERE r.item = i.id AND %s ORDER BY r.entry DESC LIMIT 1), '') AS name
                        FROM production.unit u JOIN catalog.item i ON i.id = u.item WHERE u.id = :unit
                        """.formatted(Known.at("r.entry")))
                .param("unit", unit)
                .param("cutoff", cutoff)
                .query((rs, n) -> new String[] {rs.getString(1), rs.getString(2)})
                .single();
    }

    /** The units it is inside now, the nearest first. */
    List<Parent> parents(long unit, long cutoff) {
        List<Parent> parents = new ArrayList<>();
        Optional<Parent> next = parent(unit, cutoff);
        while (next.isPresent() && parents.size() < HIGHEST) {
            parents.add(next.get());
            next = parent(next.get().unit(), cutoff);
        }
        return parents;
    }

    private Optional<Parent> parent(long unit, long cutoff) {
        return jdbc.sql("""
                        SELECT s.parent, i.number, u.serial, u.issuer, i.level, s.position, s.installed_at
                        FROM (%s) s JOIN production.unit u ON u.id = s.parent JOIN catalog.item i ON i.id = u.item
                        WHERE s.child_unit = :unit AND s.removed_at IS NULL
                        ORDER BY s.installed_at DESC, s.entry DESC LIMIT 1
                        """.formatted(KnownStays.SQL))
                .param("unit", unit)
                .param("cutoff", cutoff)
                .query((rs, n) -> new Parent(
                        rs.getLong(1),
                        UnitId.of(rs.getString(4), rs.getString(2), rs.getString(3)),
                        rs.getString(5),
                        rs.getString(6),
                        rs.getObject(7, OffsetDateTime.class)))
                .optional();
    }

    /** Where an outermost unit was seen last, in words. */
    String place(long unit, long cutoff) {
        return jdbc.sql(SEEN)
                .param("unit", unit)
                .param("cutoff", cutoff)
                .query((rs, n) -> rs.getString(1))
                .optional()
                .orElse("named by other records only; nothing says where it is");
    }

    /** Every shipment the unit was in, itself or inside another. */
    List<Shipped> shipments(long unit, long cutoff) {
        return jdbc.sql("""
                        WITH RECURSIVE around (unit, during, path) AS (
                          SELECT cast(:unit AS bigint), tstzrange(NULL, NULL), ARRAY[cast(:unit AS bigint)]
                          UNION ALL
                          SELECT s.parent, a.during * tstzrange(s.installed_at, s.removed_at), a.path || s.parent
                          FROM around a JOIN (%s) s ON s.child_unit = a.unit
                          WHERE tstzrange(s.installed_at, s.removed_at) && a.during AND s.parent <> ALL (a.path))
                        SELECT DISTINCT sh.number, sh.consignee, sh.shipped_at AS at, i.number AS item, u.serial, u.issuer,
                               a.unit = :unit AS itself
                        FROM around a JOIN production.shipment_unit su ON su.unit = a.unit
                        JOIN production.shipment sh ON sh.entry = su.entry AND a.during @> sh.shipped_at
                        JOIN production.unit u ON u.id = a.unit JOIN catalog.item i ON i.id = u.item
                        WHERE %s ORDER BY at DESC, sh.number
                        """.formatted(KnownStays.SQL, Known.at("sh.entry")))
                .param("unit", unit)
                .param("cutoff", cutoff)
                .query(DataClassRowMapper.newInstance(Shipped.class))
                .list();
    }

    /** The material that went into the unit, step by step. */
    List<UsedLot> uses(long unit, long cutoff) {
        return jdbc.sql("""
                        SELECT s.ended_at, s.operation, st.code, i.number, l.number, p.code, su.quantity, su.unit_of_measure,
                          ARRAY(SELECT DISTINCT hl.number FROM materials.loading h JOIN materials.lot hl ON hl.id = h.lot
                                WHERE h.position = su.position
                                  AND h.during && tstzrange(s.started_at, s.ended_at, '[]') AND %s ORDER BY 1) AS loaded
                        FROM production.step_unit sn JOIN production.step s USING (entry)
                        JOIN catalog.station st ON st.id = s.station
                        JOIN production.step_use su ON su.entry = s.entry
                        JOIN catalog.item i ON i.id = su.item
                        LEFT JOIN materials.lot l ON l.id = su.lot
                        LEFT JOIN catalog.position p ON p.id = su.position
                        WHERE sn.unit = :unit AND %s ORDER BY s.ended_at DESC, s.entry DESC, su.ordinal
                        """.formatted(Known.at("h.entry"), Known.at("s.entry")))
                .param("unit", unit)
                .param("cutoff", cutoff)
                .query((rs, n) -> new UsedLot(
                        rs.getObject(1, OffsetDateTime.class),
                        rs.getString(2),
                        rs.getString(3),
                        rs.getString(4),
                        rs.getString(5),
                        rs.getString(6),
                        rs.getBigDecimal(7),
                        rs.getString(8),
                        Arrays.asList((String[]) rs.getArray(9).getArray())))
                .list();
    }
}
