package dev.sunthread.catalog.judging;

import dev.sunthread.kernel.verdict.Judgement;
import dev.sunthread.kernel.verdict.Outcome;
import dev.sunthread.kernel.verdict.Phrase;
import java.util.List;

/** What came out for one run, and whether there were raw data to judge it by. */
public record Judged(Judgement judgement, boolean measured) {

    /** Nothing stays accepted if equipment was found bad and nobody says by how much; what failed stays failed. */
    public Judged withUnknownError() {
        return judgement.outcome() == Outcome.FAILED
                ? this
                : new Judged(
                        new Judgement(
                                Outcome.NOT_PROVEN,
                                Phrase.of("judged.unknown-error"),
                                judgement.criteria(),
                                List.copyOf(judgement.remarks())),
                        measured);
    }
}
