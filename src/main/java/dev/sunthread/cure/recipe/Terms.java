package dev.sunthread.cure.recipe;

import dev.sunthread.kernel.verdict.Judgement;
import java.util.List;

/** What a revision of a recipe states that a cure must have been like. */
public interface Terms {

    /**
     * Judges what reached one material in one or more cures, in their order: times, doses and what reacted add up, the
     * highest temperature and the fastest ramp stay, and what makes one of them doubtful makes all of it doubtful.
     *
     * @param cures at least one
     */
    Judgement judge(List<Measured> cures);

    /** Judges a run that was measured. */
    default Judgement judge(Measured run) {
        return judge(List.of(run));
    }
}
