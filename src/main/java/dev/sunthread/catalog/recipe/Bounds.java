package dev.sunthread.catalog.recipe;

import dev.sunthread.kernel.verdict.Limits;
import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** From what value on to what value something is good. */
public record Bounds(
        @Field("The least that is good; absent if it may be any less") @Nullable
        BigDecimal least,

        @Field("The most that is good; absent if it may be any more") @Nullable
        BigDecimal most,

        @Field("How far inside a value must lie to be accepted; absent if not at all") @Nullable
        BigDecimal guard) {

    public Bounds {
        if (least == null && most == null) {
            throw new Contradiction("least", "is missing and most is too", "Give one of them or both");
        }
        if (least != null && most != null && least.compareTo(most) > 0) {
            throw new Contradiction("least", "is more than most", "Give a least value not above the most");
        }
        if (guard != null && guard.signum() < 0) {
            throw new Contradiction("guard", "is less than nought", "Give how far inside a value must lie");
        }
    }

    public Limits limits() {
        return new Limits(number(least), number(most), guard == null ? 0 : guard.doubleValue());
    }

    private static @Nullable Double number(@Nullable BigDecimal digits) {
        return digits == null ? null : digits.doubleValue();
    }
}
