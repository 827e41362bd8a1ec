package dev.sunthread.catalog;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import org.springframework.stereotype.Component;

/** Releases a revision of a recipe. */
@Component
@Needs(Right.DEFINE)
class RecipeKind implements Definition<RecipeKind.Body> {

    record Body(
            @Field("The recipe's code") String recipe,
            @Field("The revision that is released") String revision,

            @Field(value = "What people call it", text = TextForm.NAME)
            String name) {}

    private final ReleasedCodes codes;

    RecipeKind(ReleasedCodes codes) {
        this.codes = codes;
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
        return "A revision of a recipe is released: a way to cure, by name.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        codes.release(fact, "recipe", body.recipe(), body.revision(), body.name());
    }
}
