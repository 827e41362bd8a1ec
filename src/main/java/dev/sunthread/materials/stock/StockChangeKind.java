package dev.sunthread.materials.stock;

import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import dev.sunthread.ledger.body.Unreadable;
import dev.sunthread.materials.Containers;
import dev.sunthread.materials.LotRules;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;

/** One of the acts by which a quantity of a lot is counted, given out, brought back, or gone. */
class StockChangeKind implements Kind<StockChangeKind.Body> {

    record Body(
            @Field("The lot") String lot,

            @Field("The container of it, if it is about one") @Nullable
            String container,

            @Field("How much; nought for a count that found nothing")
            BigDecimal quantity,

            @Field("The unit of the quantity, as the lot's item has it")
            String unitOfMeasure,

            @Field(value = "Where it was, or where it went", text = TextForm.NAME) @Nullable
            String place,

            @Field(value = "Why, or what for", text = TextForm.NAME) @Nullable
            String why) {

        Body {
            if (quantity.signum() < 0) {
                throw new Contradiction("quantity", "is less than nought", "Give the quantity without a sign");
            }
        }
    }

    private final StockWay way;
    private final LotRules rules;
    private final Containers containers;
    private final JdbcClient jdbc;

    StockChangeKind(StockWay way, LotRules rules, Containers containers, JdbcClient jdbc) {
        this.way = way;
        this.rules = rules;
        this.containers = containers;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return way.word();
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return way.meaning();
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        onlyACountFindsNothing(body);
        long lot = way == StockWay.ISSUE ? rules.taken(fact, body.lot()) : rules.named(fact, body.lot());
        rules.quantityIsInTheLotsUnit(fact, body.lot(), lot, body.unitOfMeasure());
        jdbc.sql("""
                        INSERT INTO materials.stock_change
                          (entry, lot, container, way, quantity, unit_of_measure, place, why, changed_at)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(fact.entry(), lot)
                .param(containers.ofLot(fact, body.container(), body.lot(), lot))
                .params(way.name(), body.quantity(), body.unitOfMeasure())
                .param(body.place())
                .param(body.why())
                .param(fact.occurredAt())
                .update();
    }

    private void onlyACountFindsNothing(Body body) {
        if (way != StockWay.COUNT && body.quantity().signum() == 0) {
            throw Unreadable.at("body.quantity", "is nought", "Give how much it was");
        }
    }
}
