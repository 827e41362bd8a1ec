package dev.sunthread.catalog.recipe;

import dev.sunthread.ledger.body.Field;
import org.jspecify.annotations.Nullable;

/** A dwell of silicone in moist air, or of epoxy at room temperature. */
public record DwellTerms(
        @Field("What the record must be like") Recording recording,
        @Field("For how many hours") Bounds hours,
        @Field("At which temperatures, in degrees Celsius") Stretch temperature,

        @Field("In which relative humidity, in percent; absent if it does not matter") @Nullable
        Stretch humidity) {}
