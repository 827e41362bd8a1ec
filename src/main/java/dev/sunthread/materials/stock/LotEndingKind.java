package dev.sunthread.materials.stock;

import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.Known;
import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.materials.ContainerAges;
import dev.sunthread.materials.Containers;
import dev.sunthread.materials.LotRules;
import dev.sunthread.materials.Quantities;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Nothing of a lot, or of one container of it, is in the plant any more. */
@Component
class LotEndingKind implements Kind<LotEndingKind.Body> {

    record Body(
            @Field("The lot") String lot,

            @Field("The container of it, if only that is gone") @Nullable
            String container,

            @Field("Used to the last, thrown away, or sent back to the supplier")
            Why why,

            @Field(value = "How much was thrown away or sent back; absent for all that was left", positive = true)
            @Nullable
            BigDecimal quantity,

            @Field("The unit of the quantity, as the lot's item has it") @Nullable
            String unitOfMeasure) {

        Body {
            Quantities.standTogether(quantity, unitOfMeasure);
            if (quantity != null && why == Why.USED_UP) {
                throw new Contradiction(
                        "quantity", "is given where nothing was left", "Leave it out; record uses by their steps");
            }
        }
    }

    /** Where the last of a lot went. */
    enum Why {
        USED_UP,
        SCRAPPED,
        RETURNED
    }

    private final LotRules rules;
    private final Containers containers;
    private final ContainerAges ages;
    private final JdbcClient jdbc;

    LotEndingKind(LotRules rules, Containers containers, ContainerAges ages, JdbcClient jdbc) {
        this.rules = rules;
        this.containers = containers;
        this.ages = ages;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "lot-ending";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "Nothing of a lot, or of one container of it, is in the plant any more, except where it went into units.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        long lot = rules.named(fact, body.lot());
        rules.quantityIsInTheLotsUnit(fact, body.lot(), lot, body.unitOfMeasure());
        Long container = containers.ofLot(fact, body.container(), body.lot(), lot);
        lotEndsOnce(fact, lot, container);
        jdbc.sql("""
                        INSERT INTO materials.lot_ending
                          (entry, lot, container, why, quantity, unit_of_measure, ended_at)
                        VALUES (?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(fact.entry(), lot)
                .param(container)
                .param(body.why().name())
                .param(body.quantity())
                .param(body.unitOfMeasure())
                .param(fact.occurredAt())
                .update();
        rules.endingsChanged();
        if (container != null) {
            ages.changed(container);
        }
    }

    private void lotEndsOnce(Fact<Body> fact, long lot, @Nullable Long container) {
        boolean ended = jdbc.sql("SELECT 1 FROM materials.lot_ending n WHERE n.lot = ?"
                        + " AND (n.container IS NULL OR n.container = ?) AND " + Known.now("n.entry") + " LIMIT 1")
                .param(lot)
                .param(container)
                .query(Integer.class)
                .optional()
                .isPresent();
        if (ended) {
            fact.breaks(
                    "lot-ends-once",
                    "Lot " + fact.body().lot() + ", or this container of it, was ended before",
                    "Void the ending that is wrong",
                    TraceRef.lot(lot));
        }
    }
}
