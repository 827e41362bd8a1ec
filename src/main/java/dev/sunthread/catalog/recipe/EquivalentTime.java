package dev.sunthread.catalog.recipe;

import dev.sunthread.ledger.body.Field;
import java.math.BigDecimal;

/** Time at one temperature that does as much as the profile, by Arrhenius. */
public record EquivalentTime(
        @Field(value = "The activation energy, in J/mol", positive = true)
        BigDecimal energy,

        @Field("The temperature it is stated at, in degrees Celsius")
        BigDecimal reference,

        @Field("For how many minutes") Bounds minutes) {}
