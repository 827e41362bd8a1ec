package dev.sunthread.genealogy;

import dev.sunthread.kernel.Refused;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.kernel.UnitId;
import dev.sunthread.ledger.Known;
import dev.sunthread.materials.Lots;
import dev.sunthread.production.Units;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Finds the nodes that the root of a question stands for. */
@Component
class Suspects {

    private static final String BEHIND_SUPPLIER_LOT = """
            SELECT DISTINCT r.lot FROM materials.receipt_supplier_lot s JOIN materials.receipt r USING (entry)
            WHERE s.supplier_lot = :text AND %s ORDER BY r.lot
            """.formatted(Known.at("r.entry"));

    private final JdbcClient jdbc;
    private final Lots lots;
    private final Units units;

    Suspects(JdbcClient jdbc, Lots lots, Units units) {
        this.jdbc = jdbc;
        this.lots = lots;
        this.units = units;
    }

    /** @throws Refused if nothing of that name was ever recorded */
    List<TraceRef> of(Root root, long cutoff) {
        if (root instanceof Root.OfLot lot) {
            return List.of(TraceRef.lot(lots.find(lot.number()).orElseThrow(() -> unknown("Lot " + lot.number()))));
        }
        if (root instanceof Root.OfUnit unit) {
            UnitId id = unit.id();
            return List.of(TraceRef.unit(units.find(id).orElseThrow(() -> unknown("Unit " + id))));
        }
        return behind(((Root.OfSupplierLot) root).text(), cutoff);
    }

    private List<TraceRef> behind(String supplierLot, long cutoff) {
        List<TraceRef> found = jdbc.sql(BEHIND_SUPPLIER_LOT)
                .param("text", supplierLot)
                .param("cutoff", cutoff)
                .query((row, number) -> TraceRef.lot(row.getLong(1)))
                .list();
        if (found.isEmpty()) {
            throw unknown("Supplier lot " + supplierLot);
        }
        return found;
    }

    private static Refused unknown(String what) {
        return new Refused(what + " is not recorded", "Look for near matches with the search box");
    }
}
