package dev.sunthread.cure.judging;

import dev.sunthread.catalog.FoundError;
import dev.sunthread.catalog.judging.Judge;
import dev.sunthread.catalog.judging.Judged;
import dev.sunthread.catalog.recipe.RecipeTerms;
import dev.sunthread.cure.recipe.Measured;
import dev.sunthread.cure.recipe.Terms;
import dev.sunthread.kernel.verdict.Judgement;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Unusable;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;

/** Judges cure runs from the readings of their sensors. */
@Component
public class CureJudge implements Judge<RecipeTerms> {

    private final RawRuns raw;

    CureJudge(RawRuns raw) {
        this.raw = raw;
    }

    @Override
    public Map<Long, Judged> judge(Collection<Case> cases, RecipeTerms stated, Errors errors) {
        Terms terms = StatedTerms.of(stated);
        Map<Long, RawRun> runs = raw.of(cases);
        Map<Long, Judged> judged = new LinkedHashMap<>();
        cases.forEach(run -> {
            RawRun found = runs.get(run.entry());
            if (found != null) {
                judged.put(run.entry(), judge(found, terms, errors.of(run)));
            }
        });
        return judged;
    }

    private static Judged judge(RawRun run, Terms terms, List<FoundError> errors) {
        boolean measured = !run.series().isEmpty();
        if (!measured && run.lampIsUnknown()) {
            return new Judged(Judgement.notProven(Phrase.of("judged.no-profile")), false);
        }
        try {
            Measured readings = run.measured(errors);
            return new Judged(terms.judge(readings), measured);
        } catch (Unusable unusable) {
            return new Judged(Judgement.notProven(Phrase.of("judged.profile-unusable", unusable.why())), measured);
        } catch (IllegalArgumentException | IllegalStateException | ArithmeticException beyondNumbers) {
            return new Judged(Judgement.notProven(Phrase.of("judged.recipe-no-result")), measured);
        }
    }
}
