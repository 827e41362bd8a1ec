package dev.sunthread.materials;

import dev.sunthread.catalog.Item;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** A lot came in; several supplier lots may stand behind it, and one supplier lot behind several receipts. */
@Component
class ReceiptKind implements Kind<ReceiptKind.Body> {

    record Body(
            @Field("The plant's own number of the lot") String lot,
            @Field("The item it is of") String item,

            @Field(value = "How much came in", positive = true)
            BigDecimal quantity,

            @Field("The unit of the quantity, as the item has it")
            String unitOfMeasure,

            @Field("Who delivered it") @Nullable String supplier,

            @Field(value = "The supplier's own lots it consists of", atMost = 1000)
            List<String> supplierLots,

            @Field("When it may no longer be used") @Nullable
            OffsetDateTime expiresAt) {}

    private final LotItems items;
    private final Lots lots;
    private final JdbcClient jdbc;

    ReceiptKind(LotItems items, Lots lots, JdbcClient jdbc) {
        this.items = items;
        this.lots = lots;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "receipt";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A lot of one item was received, from stated supplier lots.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        Item item = items.named(body.item(), body.unitOfMeasure());
        long lot = lots.known(body.lot());
        lotIsReceivedOnce(fact, lot);
        jdbc.sql("""
                        INSERT INTO materials.receipt
                          (entry, lot, item, received_at, quantity, unit_of_measure, supplier, expires_at)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(fact.entry(), lot, item.id(), fact.occurredAt())
                .params(body.quantity(), body.unitOfMeasure())
                .param(body.supplier())
                .param(body.expiresAt())
                .update();
        lots.originChanged(lot);
        for (String supplierLot : new HashSet<>(body.supplierLots())) {
            jdbc.sql("INSERT INTO materials.receipt_supplier_lot (entry, supplier_lot) VALUES (?, ?)")
                    .params(fact.entry(), supplierLot)
                    .update();
        }
    }

    private void lotIsReceivedOnce(Fact<Body> fact, long lot) {
        if (lots.hasOrigin(lot)) {
            fact.breaks(
                    "lot-is-received-once",
                    "Lot " + fact.body().lot() + " was received or made before",
                    "Give a new delivery a lot number of its own, or void the receipt that is wrong",
                    TraceRef.lot(lot));
        }
    }
}
