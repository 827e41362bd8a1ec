package dev.sunthread.web.run;

import dev.sunthread.catalog.judging.Under;
import dev.sunthread.kernel.verdict.Criterion;
import dev.sunthread.kernel.verdict.Digit;
import dev.sunthread.kernel.verdict.Judgement;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a run's raw data say under one revision, in words.
 *
 * @param inForce whether the revision was in force when the run began
 */
public record RunVerdict(
        String revision, boolean inForce, String outcome, String sentence, List<String> remarks, List<Row> criteria) {

    /** A value with its limits. */
    public record Row(
            String name,
            @Nullable String value,
            String unit,
            String limits,
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
                criterion.value() == null ? null : criterion.value().toString(),
                criterion.unit(),
                criterion.limits().words(criterion.unit()),
                criterion.value() == null
                        ? null
                        : Digit.plain(criterion.limits().margin(criterion.value())),
                criterion.outcome().words());
    }
}
