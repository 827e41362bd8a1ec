package dev.sunthread.catalog.recipe;

import dev.sunthread.ledger.body.Field;
import java.math.BigDecimal;

/** What a record of sensors must be like to be believed. */
public record Recording(
        @Field(value = "Up to what distance, in seconds, two readings tell what was between them", positive = true)
        BigDecimal longestGap,

        @Field(
                value = "The fastest that a reading can truly change, per second; beyond it the sensor jumps",
                positive = true)
        BigDecimal fastestChange) {}
