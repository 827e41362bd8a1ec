package dev.sunthread.catalog.specification;

import dev.sunthread.ledger.body.Field;
import java.util.List;

/** What a test must show; nothing if no test can be judged by it. */
public record SpecificationTerms(
        @Field("What curves of current and voltage must show")
        List<CurveTerms> curves,

        @Field("What curves without light must show") List<DarkTerms> dark,

        @Field("What tests of insulation and ground path must show")
        List<SafetyTerms> safety) {

    public boolean isEmpty() {
        return curves.isEmpty() && dark.isEmpty() && safety.isEmpty();
    }
}
