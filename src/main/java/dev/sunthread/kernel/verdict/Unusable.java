package dev.sunthread.kernel.verdict;

import dev.sunthread.kernel.Refused;

/** Nothing can be computed from what was measured: why, and what to do about it, in whatever language is read. */
public final class Unusable extends Refused {

    private final transient Phrase why;
    private final transient Phrase advice;

    public Unusable(Phrase why, Phrase advice) {
        super(why.english(), advice.english());
        this.why = why;
        this.advice = advice;
    }

    public Phrase why() {
        return why;
    }

    public Phrase advice() {
        return advice;
    }
}
