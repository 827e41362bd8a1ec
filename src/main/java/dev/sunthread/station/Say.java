package dev.sunthread.station;

import java.util.Arrays;
import java.util.List;

/** A sentence as a key of the module's messages and what goes into it; a sentence of a rule has the key {@code said}. */
public record Say(String key, List<String> with) {

    public Say {
        with = List.copyOf(with);
    }

    public static Say of(String key, Object... with) {
        return new Say(key, Arrays.stream(with).map(String::valueOf).toList());
    }

    /** A sentence that comes in words. */
    public static Say words(String sentence) {
        return of("said", sentence);
    }
}
