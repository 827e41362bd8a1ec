package dev.sunthread.catalog.recipe;

import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import org.jspecify.annotations.Nullable;

/** How a cure must have been: by heat, by light, or by standing in a climate; nothing if no run can be judged by it. */
public record RecipeTerms(
        @Field("What a cure by heat must have been like") @Nullable
        ThermalTerms thermal,

        @Field("What a cure by ultraviolet light must have been like") @Nullable
        LightTerms light,

        @Field("What a dwell in a climate must have been like") @Nullable
        DwellTerms dwell) {

    public RecipeTerms {
        int ways = (thermal == null ? 0 : 1) + (light == null ? 0 : 1) + (dwell == null ? 0 : 1);
        if (ways > 1) {
            throw new Contradiction(
                    "thermal", "stands beside another way to cure", "Give one of thermal, light and dwell");
        }
    }

    public boolean isEmpty() {
        return thermal == null && light == null && dwell == null;
    }
}
