package dev.sunthread.materials.making;

import dev.sunthread.catalog.Stations;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.materials.LotMaking;
import dev.sunthread.materials.LotPart;
import dev.sunthread.materials.NewLot;
import dev.sunthread.materials.Quantities;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** A lot, or a container of it, was divided into lots of their own. */
@Component
class SplitKind implements Kind<SplitKind.Body> {

    record Body(
            @Field("The lot that was divided") String lot,

            @Field("The container that was divided, if its label was scanned") @Nullable
            String container,

            @Field(value = "The lots that came about", atLeast = 1, atMost = 1000)
            List<Share> into,

            @Field("The station where it was done") @Nullable
            String station) {

        Body {
            if (into.stream().map(Share::lot).distinct().count() < into.size()) {
                throw new Contradiction("into", "names a lot twice", "Give each part a lot number of its own");
            }
        }
    }

    /** One of the lots that came about. */
    record Share(
            @Field("Its lot number") String lot,

            @Field(value = "How much it got", positive = true) @Nullable
            BigDecimal quantity,

            @Field("The unit of the quantity, as the lot's item has it") @Nullable
            String unitOfMeasure,

            @Field("When it may no longer be used; absent for when the divided lot may not") @Nullable
            OffsetDateTime expiresAt) {

        Share {
            Quantities.standTogether(quantity, unitOfMeasure);
        }
    }

    private final Stations stations;
    private final Parts parts;
    private final LotMaking making;

    SplitKind(Stations stations, Parts parts, LotMaking making) {
        this.stations = stations;
        this.parts = parts;
        this.making = making;
    }

    @Override
    public String name() {
        return "split";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A lot was divided into lots of their own, for instance when it was thawed.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        Long station = body.station() == null
                ? null
                : stations.named(body.station(), "body.station").id();
        LotPart divided = parts.taken(fact, new PartName(body.lot(), body.container(), null, null));
        for (Share share : body.into()) {
            NewLot made = NewLot.of(share.lot(), NewLot.Way.SPLIT, parts.itemOf(List.of(divided)))
                    .of(share.quantity(), share.unitOfMeasure())
                    .made(share.expiresAt(), station);
            making.made(fact, made, List.of(shareOf(fact, divided, share)));
        }
    }

    private LotPart shareOf(Fact<Body> fact, LotPart divided, Share share) {
        parts.quantityIsInTheLotsUnit(fact, divided, share.unitOfMeasure());
        return new LotPart(divided.lot(), divided.container(), share.quantity(), share.unitOfMeasure());
    }
}
