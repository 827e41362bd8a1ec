package dev.sunthread.catalog.recipe;

import dev.sunthread.ledger.body.Field;
import org.jspecify.annotations.Nullable;

/** A cure by heat. */
public record ThermalTerms(
        @Field("Which of several sensors counts; the coldest counts for what must at least be reached, the hottest for"
                + " what must not be exceeded, unless one of them counts for both, or the mean does, or for each bond"
                + " the sensor nearest to its position")
        Sensors sensors,

        @Field("What the record must be like") Recording recording,

        @Field("For how long within which temperatures") @Nullable
        Soak soak,

        @Field("How hot it must and may become, in degrees Celsius") @Nullable
        Bounds peak,

        @Field("How fast it must and may heat up") @Nullable Ramp heating,

        @Field("How fast it must and may cool down") @Nullable
        Ramp cooling,

        @Field("For how long in equivalent time") @Nullable EquivalentTime equivalentTime,

        @Field("How far the reaction must have gone") @Nullable
        Degree degree) {

    /** Which sensor counts. */
    public enum Sensors {
        COLDEST_AND_HOTTEST,
        COLDEST,
        HOTTEST,
        MEAN,
        NEAREST
    }
}
