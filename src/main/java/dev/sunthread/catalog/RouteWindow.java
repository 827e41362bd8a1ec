package dev.sunthread.catalog;

import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import org.jspecify.annotations.Nullable;

/** How long after an earlier operation the next may begin, as a body tells it. */
record RouteWindow(
        @Field("The earlier operation of the route, by its code")
        String after,

        @Field(value = "Seconds from its end that have to pass", positive = true) @Nullable
        Integer atLeast,

        @Field(value = "Seconds from its end after which it is too late", positive = true) @Nullable
        Integer atMost) {

    RouteWindow {
        if (atLeast == null && atMost == null) {
            throw new Contradiction("atMost", "and atLeast are both missing", "Give one of them, or both");
        }
        if (atLeast != null && atMost != null && atLeast > atMost) {
            throw new Contradiction("atMost", "is less than atLeast", "Give a window that some moment is in");
        }
    }
}
