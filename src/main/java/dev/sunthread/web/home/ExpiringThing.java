package dev.sunthread.web.home;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * A lot, or an opened container of one, that expired or soon does.
 *
 * @param container its label; absent for the lot itself
 * @param expired whether the time is past
 * @param onHand what should be left by the records; absent where they tell no quantity
 */
public record ExpiringThing(
        String lot,
        @Nullable String container,
        @Nullable String item,
        OffsetDateTime expiresAt,
        boolean expired,
        @Nullable OffsetDateTime openedAt,
        @Nullable BigDecimal onHand,
        @Nullable String unitOfMeasure) {

    /** Where it stands, in a word. */
    public String state() {
        return expired ? "expired" : "expires soon";
    }
}
