package dev.sunthread.cure.judging;

import dev.sunthread.catalog.FoundErrors;
import dev.sunthread.catalog.Recipes;
import dev.sunthread.catalog.judging.Runs;
import dev.sunthread.catalog.judging.Verdicts;
import dev.sunthread.catalog.recipe.RecipeTerms;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Verdicts on cure runs. */
@Component
public class CureVerdicts extends Verdicts<RecipeTerms> {

    CureVerdicts(Recipes recipes, CureJudge judge, FoundErrors errors, JdbcClient jdbc) {
        super(Runs.CURES, recipes, judge, errors, jdbc);
    }
}
