package dev.sunthread.catalog;

import dev.sunthread.catalog.recipe.RecipeTerms;
import dev.sunthread.ledger.Remembered;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** What released revisions of recipes state for computation. */
@Component
public class Recipes extends TermsHistory<RecipeTerms> {

    Recipes(Remembered remembered, ApplicationEventPublisher events, JdbcClient jdbc) {
        super("recipe", RecipeTerms.class, remembered, events, jdbc);
    }
}
