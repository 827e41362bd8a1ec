package dev.sunthread.materials.making;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.materials.LotItems;
import dev.sunthread.materials.LotMaking;
import dev.sunthread.materials.NewLot;
import dev.sunthread.materials.Quantities;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** A lot goes on as a lot of another item. */
@Component
@Needs(Right.JUDGE)
class RegradeKind implements Kind<RegradeKind.Body> {

    record Body(
            @Field("The lot that was regraded") String lot,
            @Field("The lot as which it goes on") String into,
            @Field("The item it is of from now on") String item,

            @Field(value = "How much was regraded; absent for all that was left", positive = true) @Nullable
            BigDecimal quantity,

            @Field("The unit of the quantity, as both items have it") @Nullable
            String unitOfMeasure) {

        Body {
            Quantities.standTogether(quantity, unitOfMeasure);
        }
    }

    private final LotItems items;
    private final Parts parts;
    private final LotMaking making;

    RegradeKind(LotItems items, Parts parts, LotMaking making) {
        this.items = items;
        this.parts = parts;
        this.making = making;
    }

    @Override
    public String name() {
        return "regrade";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A lot, or a quantity of it, goes on as a lot of another item, for instance of a lower grade.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        long item = items.named(body.item(), body.unitOfMeasure()).id();
        NewLot made = NewLot.of(body.into(), NewLot.Way.REGRADE, item).of(body.quantity(), body.unitOfMeasure());
        PartName regraded = new PartName(body.lot(), null, body.quantity(), body.unitOfMeasure());
        making.made(fact, made, List.of(parts.taken(fact, regraded)));
    }
}
