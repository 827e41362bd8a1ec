package dev.sunthread.catalog;

import dev.sunthread.kernel.verdict.Span;
import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** By how much equipment was found to read above the truth. */
public record FoundError(
        @Field("The sensor, by its mark; absent if every sensor of that quantity") @Nullable
        String sensor,

        @Field("What it reads wrong") Quantity quantity,

        @Field(
                "By how much it reads above the truth, in kelvin, mW/cm2 or percent of humidity; less than nought if below")
        @Nullable
        BigDecimal offset,

        @Field("By how many percent of the truth it reads above it; less than nought if below") @Nullable
        BigDecimal percent,

        @Field("Whether it read so ever since the check before; absent if that is unknown") @Nullable
        Onset onset) {

    /** What equipment measures. */
    public enum Quantity {
        TEMPERATURE,
        IRRADIANCE,
        HUMIDITY,
        CURRENT,
        VOLTAGE
    }

    /** Since when it reads so. */
    public enum Onset {
        UNKNOWN,
        ALWAYS
    }

    public FoundError {
        if ((offset == null) == (percent == null)) {
            throw new Contradiction("offset", "or percent is demanded", "Give one of them");
        }
        if (percent != null && percent.compareTo(BigDecimal.valueOf(-100)) <= 0) {
            throw new Contradiction("percent", "leaves nothing of the truth", "Give more than -100");
        }
        boolean electrical = quantity == Quantity.CURRENT || quantity == Quantity.VOLTAGE;
        if (electrical && percent == null) {
            throw new Contradiction("percent", "is missing for current and voltage", "Give the error in percent");
        }
        if (!electrical && offset == null) {
            throw new Contradiction("offset", "is missing for a sensor", "Give the error in the sensor's unit");
        }
    }

    /** The error at any moment since the check before: the whole of it, or anything from nought on if that is unknown. */
    public Span span() {
        double whole = offset == null ? percentOfTruth() : offset.doubleValue();
        return onset == Onset.ALWAYS ? Span.exactly(whole) : Span.between(0, whole);
    }

    private double percentOfTruth() {
        return percent == null ? 0 : percent.doubleValue() / 100;
    }
}
