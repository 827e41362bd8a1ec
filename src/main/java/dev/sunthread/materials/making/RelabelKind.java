package dev.sunthread.materials.making;

import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.materials.LotMaking;
import dev.sunthread.materials.LotPart;
import dev.sunthread.materials.NewLot;
import java.util.List;
import org.springframework.stereotype.Component;

/** A lot goes on under another number. */
@Component
class RelabelKind implements Kind<RelabelKind.Body> {

    record Body(
            @Field("The lot that was relabelled") String lot,
            @Field("Its new number") String into) {}

    private final Parts parts;
    private final LotMaking making;

    RelabelKind(Parts parts, LotMaking making) {
        this.parts = parts;
        this.making = making;
    }

    @Override
    public String name() {
        return "relabel";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "All that was left of a lot goes on under another lot number.";
    }

    @Override
    public void record(Fact<Body> fact) {
        List<LotPart> relabelled =
                List.of(parts.taken(fact, PartName.wholeOf(fact.body().lot())));
        making.made(fact, NewLot.of(fact.body().into(), NewLot.Way.RELABEL, parts.itemOf(relabelled)), relabelled);
    }
}
