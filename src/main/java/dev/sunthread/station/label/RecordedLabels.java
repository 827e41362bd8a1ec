package dev.sunthread.station.label;

import dev.sunthread.kernel.UnitId;
import dev.sunthread.ledger.Known;
import dev.sunthread.production.UnitName;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Looks up what is recorded under a name. */
@Repository
class RecordedLabels {

    private static final String UNITS = """
            SELECT i.number, u.serial, u.issuer,
              NOT EXISTS (SELECT FROM production.birth b WHERE b.unit = u.id AND %s) AS is_new
            FROM production.unit u JOIN catalog.item i ON i.id = u.item
            WHERE u.serial = :serial AND (:item::text IS NULL OR i.number = :item)
            ORDER BY i.number, u.issuer
            """.formatted(Known.now("b.entry"));

    private static final String MATERIAL = """
            SELECT l.number, NULL AS label, %1$s FROM materials.lot l WHERE l.number = :name AND :lots
            UNION ALL
            SELECT DISTINCT l.number, c.label, %1$s FROM materials.container c
            JOIN materials.container_filling f ON f.container = c.id AND %2$s JOIN materials.lot l ON l.id = f.lot
            WHERE c.label = :name AND :containers
            """.formatted("""
                    (SELECT CASE WHEN count(DISTINCT o.item) = 1 THEN min(i.number) END
                     FROM materials.lot_origin o JOIN catalog.item i ON i.id = o.item WHERE o.lot = l.id)
                    """, Known.now("f.entry"));

    private final JdbcClient jdbc;

    RecordedLabels(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The units with this serial, of that item if it is given. */
    List<Label> units(String serial, @Nullable String item) {
        return jdbc.sql(UNITS)
                .param("serial", serial)
                .param("item", item)
                .query((row, number) -> (Label) new Label.OfUnit(
                        UnitName.of(UnitId.of(row.getString(3), row.getString(1), row.getString(2))),
                        row.getBoolean(4)))
                .list();
    }

    /** The lots, the containers or both that are called so. */
    List<Label> material(String name, boolean lots, boolean containers) {
        return jdbc.sql(MATERIAL)
                .param("name", name)
                .param("lots", lots)
                .param("containers", containers)
                .query((row, number) ->
                        (Label) new Label.OfMaterial(row.getString(1), row.getString(2), row.getString(3)))
                .list();
    }

    /** The lots that were received under a supplier's number of a lot. */
    List<Label> suppliedLots(String supplierLot) {
        return jdbc.sql("""
                        SELECT DISTINCT l.number FROM materials.receipt_supplier_lot s JOIN materials.receipt r USING (entry)
                        JOIN materials.lot l ON l.id = r.lot WHERE s.supplier_lot = ? AND %s ORDER BY 1
                        """.formatted(Known.now("r.entry"))).param(supplierLot).query(String.class).list().stream()
                .flatMap(lot -> material(lot, true, false).stream())
                .toList();
    }

    /** The position of a station, if the station has it. */
    List<Label> positions(String station, String position) {
        return jdbc.sql("""
                        SELECT s.code, p.code FROM catalog.position p JOIN catalog.station s ON s.id = p.station
                        WHERE s.code = ? AND p.code = ?
                        """)
                .params(station, position)
                .query((row, number) -> (Label) new Label.OfPosition(row.getString(1), row.getString(2)))
                .list();
    }

    boolean isTrackedBySerial(String item) {
        return jdbc.sql("SELECT EXISTS (SELECT FROM catalog.item WHERE number = ? AND tracking = 'SERIAL')")
                .param(item)
                .query(Boolean.class)
                .single();
    }

    /** Everything that is called so, of positions those of the station. */
    List<Label> called(String name, String station) {
        Set<Label> found = new LinkedHashSet<>(units(name, null));
        found.addAll(material(name, true, true));
        jdbc.sql("""
                        SELECT 'carrier', code FROM production.carrier WHERE code = :name
                        UNION ALL SELECT 'equipment', code FROM catalog.equipment WHERE code = :name
                        UNION ALL SELECT 'position', p.code FROM catalog.position p JOIN catalog.station s ON s.id = p.station
                          WHERE p.code = :name AND s.code = :station
                        """).param("name", name).param("station", station).query(row -> {
            found.add(
                    switch (row.getString(1)) {
                        case "carrier" -> new Label.OfCarrier(row.getString(2));
                        case "equipment" -> new Label.OfEquipment(row.getString(2));
                        default -> new Label.OfPosition(station, row.getString(2));
                    });
        });
        return List.copyOf(found);
    }
}
