package dev.sunthread.materials.making;

import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.materials.LotMaking;
import dev.sunthread.materials.LotPart;
import dev.sunthread.materials.NewLot;
import dev.sunthread.materials.Quantities;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** All that was left of some lots was put together as one. */
@Component
class MergeKind implements Kind<MergeKind.Body> {

    record Body(
            @Field(value = "The lots that were put together", atLeast = 1, atMost = 200)
            List<String> lots,

            @Field("The lot as which they go on") String into,

            @Field(value = "How much it is", positive = true) @Nullable
            BigDecimal quantity,

            @Field("The unit of the quantity, as the lots' item has it") @Nullable
            String unitOfMeasure) {

        Body {
            Quantities.standTogether(quantity, unitOfMeasure);
            if (lots.stream().distinct().count() < 2) {
                throw new Contradiction("lots", "names fewer than two lots", "Name every lot that was put together");
            }
        }
    }

    private final Parts parts;
    private final LotMaking making;

    MergeKind(Parts parts, LotMaking making) {
        this.parts = parts;
        this.making = making;
    }

    @Override
    public String name() {
        return "merge";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "All that was left of some lots of one item was put together as one lot.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        List<LotPart> merged = parts.taken(
                fact, body.lots().stream().distinct().map(PartName::wholeOf).toList());
        Long item = parts.itemOf(merged);
        if (item == null) {
            lotsThatAreMergedAreOfOneItem(fact, merged);
        }
        merged.forEach(part -> parts.quantityIsInTheLotsUnit(fact, part, body.unitOfMeasure()));
        NewLot made = NewLot.of(body.into(), NewLot.Way.MERGE, item).of(body.quantity(), body.unitOfMeasure());
        making.made(fact, made, merged);
    }

    private static void lotsThatAreMergedAreOfOneItem(Fact<Body> fact, List<LotPart> merged) {
        fact.breaks(
                "lots-that-are-merged-are-of-one-item",
                "Lots that are not known to be of one item were merged into lot "
                        + fact.body().into(),
                "Record receipts that were missed, correct the lots, or record a blend",
                merged.stream().map(part -> TraceRef.lot(part.lot())).toArray(TraceRef[]::new));
    }
}
