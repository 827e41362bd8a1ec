package dev.sunthread.catalog.recipe;

import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** A cure by ultraviolet light. */
public record LightTerms(
        @Field("What the record must be like") Recording recording,
        @Field("The dose, in mJ/cm2") Bounds dose,

        @Field("The strongest irradiance, in mW/cm2") @Nullable
        Bounds irradiance,

        @Field(value = "The band the dose is stated for, such as 365 nm", text = TextForm.NAME) @Nullable
        String band,

        @Field("For how many hours a lamp may have burnt") @Nullable
        BigDecimal lampHours,

        @Field("Within how many hours before and after a run a radiometer must have been read") @Nullable
        BigDecimal radiometerHours) {}
