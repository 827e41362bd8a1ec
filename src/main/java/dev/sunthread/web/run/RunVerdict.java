package dev.sunthread.web.run;

import dev.sunthread.catalog.judging.Under;
import dev.sunthread.kernel.verdict.Criterion;
import dev.sunthread.kernel.verdict.Digit;
import dev.sunthread.kernel.verdict.Judgement;
import dev.sunthread.kernel.verdict.Phrase;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a run's raw data say under one revision, in words.
 *
 * @param inForce whether the revision was in force when the run began
 */
public record RunVerdict(
        String revision, boolean inForce, String outcome, Phrase sentence, List<Phrase> remarks, List<Row> criteria) {

    /** A value with its limits. */
    public record Row(
            Phrase name,
            @Nullable Object value,
            String unit,
            Phrase limits,
            @Nullable String margin,
            String outcome) {}

    static RunVerdict of(Under under) {
        Judgement judgement = under.judged().judgement();
        return new RunVerdict(
                under.revision(),
                under.inForce(),
                judgement.outcome().words(),
                judgement.sentence(),
                judgement.remarks(),
                judgement.criteria().stream().map(RunVerdict::row).toList());
    }

    private static Row row(Criterion criterion) {
        return new Row(
                criterion.name(),
                criterion.value() == null ? null : criterion.value().said(),
                criterion.unit(),
                criterion.limits().words(criterion.unit()),
                criterion.value() == null
                        ? null
                        : Digit.plain(criterion.limits().margin(criterion.value())),
                criterion.outcome().words());
    }
}
