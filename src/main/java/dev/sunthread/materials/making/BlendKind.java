package dev.sunthread.materials.making;

import dev.sunthread.catalog.Stations;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.materials.LotItems;
import dev.sunthread.materials.LotMaking;
import dev.sunthread.materials.NewLot;
import dev.sunthread.materials.Quantities;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** A lot was put together from other lots. */
@Component
class BlendKind implements Kind<BlendKind.Body> {

    record Body(
            @Field("The lot that came about") String lot,
            @Field("The item it is of") String item,

            @Field("Mixed anew, topped up on a remainder, or put together as a kit")
            Way way,

            @Field(value = "What went in", atLeast = 1, atMost = 200)
            List<PartName> components,

            @Field(value = "How much came about", positive = true) @Nullable
            BigDecimal quantity,

            @Field("The unit of the quantity, as the item has it") @Nullable
            String unitOfMeasure,

            @Field("When it may no longer be used; absent for when the first of its components may not") @Nullable
            OffsetDateTime expiresAt,

            @Field("The station where it was done") @Nullable
            String station) {

        Body {
            Quantities.standTogether(quantity, unitOfMeasure);
        }
    }

    /** How a blend can be made. */
    enum Way {
        BLEND,
        TOP_UP,
        KIT
    }

    private final LotItems items;
    private final Stations stations;
    private final Parts parts;
    private final LotMaking making;

    BlendKind(LotItems items, Stations stations, Parts parts, LotMaking making) {
        this.items = items;
        this.stations = stations;
        this.parts = parts;
        this.making = making;
    }

    @Override
    public String name() {
        return "blend";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A lot was made of other lots: a mix of several parts, a top-up on a remainder, or a kit.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        long item = items.named(body.item(), body.unitOfMeasure()).id();
        Long station = body.station() == null
                ? null
                : stations.named(body.station(), "body.station").id();
        NewLot made = NewLot.of(body.lot(), NewLot.Way.valueOf(body.way().name()), item)
                .of(body.quantity(), body.unitOfMeasure())
                .made(body.expiresAt(), station);
        making.made(fact, made, parts.taken(fact, body.components()));
    }
}
