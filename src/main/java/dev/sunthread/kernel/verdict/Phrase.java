package dev.sunthread.kernel.verdict;

import java.util.List;
import java.util.function.BiFunction;

/**
 * Words for people in whatever language they read: the key of a message, and what stands in its places, which are texts
 * that are the same in every language, such as numbers and marks, or phrases.
 *
 * @param code the key of a message among those of judging
 */
public record Phrase(String code, List<Object> places) {

    /** @throws IllegalArgumentException if something else than text or a phrase is to stand in a place */
    public Phrase {
        places = List.copyOf(places);
        if (!places.stream().allMatch(place -> place instanceof String || place instanceof Phrase)) {
            throw new IllegalArgumentException(places + " are not all texts or phrases");
        }
    }

    public static Phrase of(String code, Object... places) {
        return new Phrase(code, List.of(places));
    }

    /** The words by messages that are asked for by key and what stands in their places. */
    public String said(BiFunction<String, Object[], String> messages) {
        return messages.apply(
                code,
                places.stream()
                        .map(place -> place instanceof Phrase phrase ? phrase.said(messages) : place)
                        .toArray());
    }

    /** The words for findings, files and interfaces, which are in English. */
    public String english() {
        return said(English::say);
    }

    @Override
    public String toString() {
        return english();
    }
}
