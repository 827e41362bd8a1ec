package dev.sunthread.catalog;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import org.springframework.stereotype.Component;

/** Releases a revision of a specification. */
@Component
@Needs(Right.DEFINE)
class SpecificationKind implements Definition<SpecificationKind.Body> {

    record Body(
            @Field("The specification's code") String specification,
            @Field("The revision that is released") String revision,

            @Field(value = "What people call it", text = TextForm.NAME)
            String name) {}

    private final ReleasedCodes codes;

    SpecificationKind(ReleasedCodes codes) {
        this.codes = codes;
    }

    @Override
    public String name() {
        return "specification";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A revision of a specification is released: what to measure and the limits, by name.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        codes.release(fact, "specification", body.specification(), body.revision(), body.name());
    }
}
