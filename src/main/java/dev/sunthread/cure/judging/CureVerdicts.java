package dev.sunthread.cure.judging;

import dev.sunthread.catalog.FoundError;
import dev.sunthread.catalog.FoundErrors;
import dev.sunthread.catalog.Recipes;
import dev.sunthread.catalog.judging.Judge;
import dev.sunthread.catalog.judging.Judged;
import dev.sunthread.catalog.judging.Runs;
import dev.sunthread.catalog.judging.Standing;
import dev.sunthread.catalog.judging.Verdicts;
import dev.sunthread.catalog.recipe.RecipeTerms;
import dev.sunthread.catalog.recipe.ThermalTerms;
import dev.sunthread.kernel.verdict.Judgement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Verdicts on cure runs, and on what they did to one bond. */
@Component
public class CureVerdicts extends Verdicts<RecipeTerms> {

    private final Recipes recipes;
    private final CureJudge judge;

    CureVerdicts(Recipes recipes, CureJudge judge, FoundErrors errors, JdbcClient jdbc) {
        super(Runs.CURES, recipes, judge, errors, jdbc);
        this.recipes = recipes;
        this.judge = judge;
    }

    /**
     * What cures by one recipe did to a bond together, as known now, under the revision in force when the last of them
     * began; nothing if no revision in force then states what could be judged.
     */
    public Optional<Judgement> bond(List<BondCure> cures) {
        List<Standing> standing = standing(cures.stream().map(BondCure::entry).toList());
        if (standing.isEmpty()) {
            return Optional.empty();
        }
        Map<Long, BondCure> byEntry = new HashMap<>();
        cures.forEach(cure -> byEntry.put(cure.entry(), cure));
        List<Judge.Case> cases = standing.stream().map(Standing::run).toList();
        List<CureJudge.Near> near = new ArrayList<>();
        cases.forEach(run -> near.add(new CureJudge.Near(run, position(byEntry.get(run.entry())))));
        Map<Long, List<FoundError>> found = found(cases);
        long last = standing.get(standing.size() - 1).revision();
        Judged judged = new Judged(
                judge.together(near, recipes.terms(last), run -> found.getOrDefault(run.checked(), List.of())), true);
        boolean unknown = found.values().stream().anyMatch(List::isEmpty);
        return Optional.of((unknown ? judged.withUnknownError() : judged).judgement());
    }

    /** Whether a bond's own position decides what counts for it in the runs of these entries. */
    public boolean positionsCount(List<Long> entries) {
        return standing(entries).stream()
                .map(standing -> recipes.terms(standing.revision()).thermal())
                .anyMatch(terms -> terms != null && terms.sensors() == ThermalTerms.Sensors.NEAREST);
    }

    private static @Nullable String position(@Nullable BondCure cure) {
        return cure == null ? null : cure.position();
    }
}
