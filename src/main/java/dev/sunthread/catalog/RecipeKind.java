package dev.sunthread.catalog;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.catalog.recipe.RecipeTerms;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Releases a revision of a recipe. */
@Component
@Needs(Right.DEFINE)
class RecipeKind implements Definition<RecipeKind.Body> {

    record Body(
            @Field("The recipe's code") String recipe,
            @Field("The revision that is released") String revision,

            @Field(value = "What people call it", text = TextForm.NAME)
            String name,

            @Field("What a cure under it must have been like; absent if no run can be judged by it") @Nullable
            RecipeTerms terms) {}

    private final ReleasedCodes codes;
    private final Recipes recipes;

    RecipeKind(ReleasedCodes codes, Recipes recipes) {
        this.codes = codes;
        this.recipes = recipes;
    }

    @Override
    public String name() {
        return "recipe";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A revision of a recipe is released: a way to cure, with what a run must have been like.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        codes.release(fact, "recipe", body.recipe(), body.revision(), body.name());
        RecipeTerms terms = body.terms();
        if (terms != null && !terms.isEmpty()) {
            recipes.record(fact, terms);
        }
    }
}
