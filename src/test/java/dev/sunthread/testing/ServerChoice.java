package dev.sunthread.testing;

import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;

/** Which PostgreSQL the tests run on: a given one, else a container where an engine answers, else the embedded one. */
enum ServerChoice {
    GIVEN,
    CONTAINER,
    EMBEDDED;

    static ServerChoice of(@Nullable String url, BooleanSupplier engineAnswers) {
        if (url != null && !url.isBlank()) {
            return GIVEN;
        }
        return engineAnswers.getAsBoolean() ? CONTAINER : EMBEDDED;
    }
}
