package dev.sunthread.catalog;

import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** A process value of an operation, and from what to what it is good, both included. */
public record ValueBounds(
        @Field("The value, by its name in steps") String value,
        @Field("The unit the limits are stated in") String unitOfMeasure,

        @Field("The least that is good; absent if it may be any less") @Nullable
        BigDecimal least,

        @Field("The most that is good; absent if it may be any more") @Nullable
        BigDecimal most) {

    public ValueBounds {
        if (least == null && most == null) {
            throw new Contradiction("least", "is missing and most is too", "Give one of them or both");
        }
        if (least != null && most != null && least.compareTo(most) > 0) {
            throw new Contradiction("least", "is more than most", "Give a least value not above the most");
        }
    }

    public boolean allows(BigDecimal number) {
        return (least == null || number.compareTo(least) >= 0) && (most == null || number.compareTo(most) <= 0);
    }

    /** In words, such as "at least 8 mg". */
    public String words() {
        if (least == null) {
            return "at most " + most + " " + unitOfMeasure;
        }
        return most == null
                ? "at least " + least + " " + unitOfMeasure
                : "from " + least + " to " + most + " " + unitOfMeasure;
    }
}
