package dev.sunthread.catalog.recipe;

import dev.sunthread.ledger.body.Field;
import java.math.BigDecimal;

/** The fastest change of temperature. */
public record Ramp(
        @Field(
                value = "Over how many seconds it is taken; between single readings noise looks like speed",
                positive = true)
        BigDecimal over,

        @Field("In kelvin per minute") Bounds perMinute) {}
