package dev.sunthread.materials;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * A lot that was made here, as far as the record tells it.
 *
 * @param item the internal number of its item
 * @param quantity how much came about, in its unit of measure; both or neither are told
 * @param expiresAt absent if it expires with the first of what it is made of
 * @param station the internal number of the station where it was made
 */
public record NewLot(
        String number,
        Way way,
        @Nullable Long item,
        @Nullable BigDecimal quantity,
        @Nullable String unitOfMeasure,
        @Nullable OffsetDateTime expiresAt,
        @Nullable Long station) {

    /** How a lot can come about here. */
    public enum Way {
        BLEND,
        TOP_UP,
        KIT,
        SPLIT,
        MERGE,
        REGRADE,
        RELABEL,
        RECOVERY,
        UNLOADING
    }

    /** A lot of which only the number, how it came about and perhaps its item are known. */
    public static NewLot of(String number, Way way, @Nullable Long item) {
        return new NewLot(number, way, item, null, null, null, null);
    }

    /** The same lot with how much of it came about. */
    public NewLot of(@Nullable BigDecimal much, @Nullable String unit) {
        return new NewLot(number, way, item, much, unit, expiresAt, station);
    }

    /** The same lot with when it expires and where it was made. */
    public NewLot made(@Nullable OffsetDateTime expires, @Nullable Long at) {
        return new NewLot(number, way, item, quantity, unitOfMeasure, expires, at);
    }
}
