package dev.sunthread.catalog.recipe;

import dev.sunthread.ledger.body.Field;

/** Time within a window of temperatures. */
public record Soak(
        @Field("The temperatures, in degrees Celsius") Stretch window,
        @Field("For how many minutes") Bounds minutes) {}
