package dev.sunthread.web.run;

import dev.sunthread.catalog.FoundError;
import dev.sunthread.catalog.Recipes;
import dev.sunthread.catalog.judging.Judge;
import dev.sunthread.catalog.recipe.RecipeTerms;
import dev.sunthread.cure.judging.RawRun;
import dev.sunthread.cure.judging.RawRuns;
import dev.sunthread.kernel.verdict.Phrase;
import dev.sunthread.kernel.verdict.Span;
import dev.sunthread.web.chart.Chart;
import dev.sunthread.web.chart.ChartDraft;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.springframework.stereotype.Component;

/** Draws the raw profile of a run against the window of its recipe. */
@Component
class CureProfiles {

    private final RawRuns raw;
    private final Recipes recipes;

    CureProfiles(RawRuns raw, Recipes recipes) {
        this.raw = raw;
        this.recipes = recipes;
    }

    CureProfile of(long entry, String recipe) {
        RawRun run = raw.of(List.of(Judge.Case.of(entry))).get(entry);
        if (run == null) {
            return new CureProfile(List.of(), List.of(), List.of(), List.of());
        }
        Optional<RecipeTerms> terms = recipes.find(recipe)
                .flatMap(id -> recipes.of(id).stream().findFirst())
                .map(released -> released.terms());
        List<Chart> charts = Arrays.stream(FoundError.Quantity.values())
                .flatMap(quantity -> chart(run, quantity, terms).stream())
                .toList();
        return new CureProfile(
                charts,
                run.series().stream().map(CureProfile::sensor).toList(),
                run.series().stream().flatMap(CureProfile::sampled).toList(),
                readings(run));
    }

    private static Optional<Chart> chart(RawRun run, FoundError.Quantity quantity, Optional<RecipeTerms> terms) {
        List<RawRun.RawSeries> drawn =
                run.series().stream().filter(one -> one.quantity() == quantity).toList();
        if (drawn.isEmpty()) {
            return Optional.empty();
        }
        Phrase name = CureProfile.measured(quantity);
        ChartDraft draft = new ChartDraft(
                Phrase.of("chart.readings", name),
                Phrase.of("chart.minutes"),
                Phrase.of("chart.with-unit", name, drawn.get(0).unitOfMeasure()));
        drawn.forEach(one -> draft.line(
                one.sensor(), Arrays.stream(one.seconds()).map(s -> s / 60).toArray(), one.values()));
        terms.flatMap(stated -> window(stated, quantity))
                .ifPresent(window -> draft.band(Phrase.of("chart.window"), window));
        return Optional.of(draft.placed());
    }

    private static Optional<Span> window(RecipeTerms terms, FoundError.Quantity quantity) {
        if (quantity == FoundError.Quantity.TEMPERATURE) {
            return terms.thermal() != null && terms.thermal().soak() != null
                    ? Optional.of(terms.thermal().soak().window().span())
                    : Optional.ofNullable(terms.dwell())
                            .map(dwell -> dwell.temperature().span());
        }
        return quantity == FoundError.Quantity.HUMIDITY
                        && terms.dwell() != null
                        && terms.dwell().humidity() != null
                ? Optional.of(terms.dwell().humidity().span())
                : Optional.empty();
    }

    private static List<CureProfile.Reading> readings(RawRun run) {
        List<CureProfile.Reading> readings = new ArrayList<>();
        run.series()
                .forEach(one -> IntStream.range(0, one.values().length)
                        .mapToObj(i -> new CureProfile.Reading(
                                one.sensor(), one.seconds()[i], one.values()[i], one.unitOfMeasure()))
                        .forEach(readings::add));
        return readings;
    }
}
