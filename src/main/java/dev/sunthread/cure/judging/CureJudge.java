package dev.sunthread.cure.judging;

import dev.sunthread.catalog.FoundError;
import dev.sunthread.catalog.judging.Judge;
import dev.sunthread.catalog.judging.Judged;
import dev.sunthread.catalog.recipe.RecipeTerms;
import dev.sunthread.catalog.recipe.ThermalTerms.Sensors;
import dev.sunthread.kernel.verdict.Judgement;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Unusable;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
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
        Map<Long, RawRun> runs = raw.of(cases);
        Map<Long, Judged> judged = new LinkedHashMap<>();
        cases.forEach(run -> {
            RawRun found = runs.get(run.entry());
            if (found != null) {
                judged.put(run.entry(), judge(found, stated, errors.of(run)));
            }
        });
        return judged;
    }

    private static Judged judge(RawRun run, RecipeTerms stated, List<FoundError> errors) {
        boolean measured = !run.series().isEmpty();
        if (!measured && run.lampIsUnknown()) {
            return new Judged(Judgement.notProven(Phrase.of("judged.no-profile")), false);
        }
        return new Judged(usable(() -> StatedTerms.of(stated).judge(run.measured(errors))), measured);
    }

    /** A run with the position of a bond in it, if that is known. */
    record Near(Case run, @Nullable String position) {}

    /** What runs did to one bond together, by what was measured nearest to it where the terms say so. */
    Judgement together(List<Near> bond, RecipeTerms stated, Errors errors) {
        boolean nearest = stated.thermal() != null && stated.thermal().sensors() == Sensors.NEAREST;
        Map<Long, RawRun> runs = raw.of(bond.stream().map(Near::run).toList());
        return usable(() -> StatedTerms.of(stated)
                .judge(bond.stream()
                        .flatMap(near -> Optional.ofNullable(runs.get(near.run().entry()))
                                .map(run -> run.measured(errors.of(near.run())))
                                .map(measured -> nearest ? measured.near(near.position()) : measured)
                                .stream())
                        .toList()));
    }

    private static Judgement usable(Supplier<Judgement> judged) {
        try {
            return judged.get();
        } catch (Unusable unusable) {
            return Judgement.notProven(Phrase.of("judged.profile-unusable", unusable.why()));
        } catch (IllegalArgumentException | IllegalStateException | ArithmeticException beyondNumbers) {
            return Judgement.notProven(Phrase.of("judged.recipe-no-result"));
        }
    }
}
