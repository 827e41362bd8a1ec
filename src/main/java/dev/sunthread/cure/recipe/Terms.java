package dev.sunthread.cure.recipe;

import dev.sunthread.kernel.verdict.Judgement;

/** What a revision of a recipe states that a cure must have been like. */
public interface Terms {

    /** Judges a run that was measured. */
    Judgement judge(Measured run);

    /** What counts for the material when it is cured more than once. */
    Effect effect(Measured run);
}
