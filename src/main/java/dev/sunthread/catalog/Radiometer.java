package dev.sunthread.catalog;

import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;

/** What a radiometer read under a lamp. */
record Radiometer(
        @Field(value = "The irradiance where the bonds are, in mW/cm2", positive = true)
        BigDecimal irradiance,

        @Field(value = "The band it reads, such as 365 nm", text = TextForm.NAME) @Nullable
        String band,

        @Field("For how many hours the lamp had burnt") @Nullable
        BigDecimal lampHours) {

    Radiometer {
        if (lampHours != null && lampHours.signum() < 0) {
            throw new Contradiction("lampHours", "is less than nought", "Give for how many hours it had burnt");
        }
    }
}
