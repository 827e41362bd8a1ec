package dev.sunthread.web.receipt;

import dev.sunthread.scan.Likeness;
import dev.sunthread.web.receipt.ReceiptPage.LotItem;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Items that come in lots, and what is nearly spelled as a label has it. */
@Repository
class ReceivableItems {

    private final JdbcClient jdbc;

    ReceivableItems(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<LotItem> all() {
        return jdbc.sql("""
                        SELECT DISTINCT ON (i.number) i.number, r.name, i.unit_of_measure
                        FROM catalog.item i JOIN catalog.item_revision r ON r.item = i.id
                        WHERE i.tracking <> 'SERIAL' ORDER BY i.number, r.entry DESC
                        """)
                .query((row, n) -> new LotItem(row.getString(1), row.getString(2), row.getString(3)))
                .list();
    }

    /** Items whose number, or a number that others give them, is spelled nearly so. */
    List<String> near(String number) {
        return jdbc.sql("""
                        SELECT i.number FROM catalog.item i WHERE %s
                        UNION
                        SELECT i.number FROM catalog.item_label_number l JOIN catalog.item i ON i.id = l.item WHERE %s
                        ORDER BY 1 LIMIT 10
                        """.formatted(Likeness.condition("i.number"), Likeness.condition("l.number")))
                .param("texts", Likeness.spellings(number).toArray(String[]::new))
                .query(String.class)
                .list();
    }

    /** Supplier lots recorded before that are spelled nearly so, and none that is exactly so. */
    List<String> nearSupplierLots(String text) {
        List<String> near = jdbc.sql("SELECT DISTINCT s.supplier_lot FROM materials.receipt_supplier_lot s WHERE "
                        + Likeness.condition("s.supplier_lot") + " ORDER BY 1 LIMIT 10")
                .param("texts", Likeness.spellings(text).toArray(String[]::new))
                .query(String.class)
                .list();
        return near.contains(text) ? List.of() : near;
    }
}
