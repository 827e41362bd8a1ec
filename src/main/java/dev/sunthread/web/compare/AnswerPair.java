package dev.sunthread.web.compare;

import org.jspecify.annotations.Nullable;

/**
 * Two answers as an address names them, each by its id or the beginning of its hash, and which lines to show.
 *
 * @param show {@code joined}, {@code left} or {@code changed}; absent for all three
 * @param page from 1
 */
public record AnswerPair(
        @Nullable String left,
        @Nullable String right,
        @Nullable String show,
        @Nullable String level,
        @Nullable Integer page) {

    boolean isComplete() {
        return left != null && right != null && !left.isBlank() && !right.isBlank();
    }

    AnswerPair shown() {
        return new AnswerPair(left, right, orNull(show), orNull(level), page);
    }

    private static @Nullable String orNull(@Nullable String text) {
        return text == null || text.isBlank() ? null : text;
    }
}
