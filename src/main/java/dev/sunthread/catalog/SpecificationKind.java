package dev.sunthread.catalog;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.catalog.specification.SpecificationTerms;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Releases a revision of a specification. */
@Component
@Needs(Right.DEFINE)
class SpecificationKind implements Definition<SpecificationKind.Body> {

    record Body(
            @Field("The specification's code") String specification,
            @Field("The revision that is released") String revision,

            @Field(value = "What people call it", text = TextForm.NAME)
            String name,

            @Field("What a test under it must show; absent if no test can be judged by it") @Nullable
            SpecificationTerms terms) {}

    private final ReleasedCodes codes;
    private final Specifications specifications;

    SpecificationKind(ReleasedCodes codes, Specifications specifications) {
        this.codes = codes;
        this.specifications = specifications;
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
        return "A revision of a specification is released: what to measure, how, and the limits.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        codes.release(fact, "specification", body.specification(), body.revision(), body.name());
        SpecificationTerms terms = body.terms();
        if (terms != null && !terms.isEmpty()) {
            specifications.record(fact, terms);
        }
    }
}
