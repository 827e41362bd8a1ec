package dev.sunthread.production;

import dev.sunthread.catalog.Item;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.materials.LotMaking;
import dev.sunthread.materials.Lots;
import dev.sunthread.materials.NewLot;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What was taken out of units into lots: each recovery is also the making of its lot. */
@Repository
class Recoveries {

    private final Lots lots;
    private final LotMaking making;
    private final Children children;
    private final JdbcClient jdbc;

    Recoveries(Lots lots, LotMaking making, Children children, JdbcClient jdbc) {
        this.lots = lots;
        this.making = making;
        this.children = children;
        this.jdbc = jdbc;
    }

    void record(Fact<RecoveryKind.Body> fact, long unit, @Nullable Item item, @Nullable Long station) {
        RecoveryKind.Body body = fact.body();
        long lot = lots.known(body.lot());
        lotIsOfOneItem(fact, lot, item);
        jdbc.sql("""
                        INSERT INTO production.recovery
                          (entry, unit, lot, quantity, unit_of_measure, station, recovered_at)
                        VALUES (?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(fact.entry(), unit, lot)
                .param(body.quantity())
                .param(body.unitOfMeasure())
                .param(station)
                .param(fact.occurredAt())
                .update();
        making.made(
                fact,
                NewLot.of(body.lot(), NewLot.Way.RECOVERY, item == null ? null : item.id())
                        .of(body.quantity(), body.unitOfMeasure())
                        .made(null, station));
    }

    private void lotIsOfOneItem(Fact<RecoveryKind.Body> fact, long lot, @Nullable Item item) {
        Long before = children.itemOf(lot);
        if (item != null && before != null && before != item.id()) {
            fact.breaks(
                    "lot-is-of-one-item",
                    "Item " + item.number() + " was put into lot " + fact.body().lot()
                            + ", which is recorded as being of another item",
                    "Correct item or lot",
                    TraceRef.lot(lot));
        }
    }
}
