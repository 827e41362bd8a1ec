package dev.sunthread.genealogy;

import org.jspecify.annotations.Nullable;

/** What comes of a question within a time: the answer, or how far it is. One of the two is there. */
public record Traced(@Nullable AnswerHead answer, @Nullable TraceProgress making) {

    static Traced answered(AnswerHead answer) {
        return new Traced(answer, null);
    }

    static Traced made(TraceProgress making) {
        return new Traced(null, making);
    }
}
