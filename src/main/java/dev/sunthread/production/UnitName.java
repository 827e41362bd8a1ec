package dev.sunthread.production;

import dev.sunthread.kernel.UnitId;
import dev.sunthread.ledger.body.Field;
import org.jspecify.annotations.Nullable;

/** A unit as a body names it. */
public record UnitName(
        @Field("The unit's item") String item,

        @Field("The serial, as written: case and leading zeros count")
        String serial,

        @Field("Who issued the serial; absent for this plant") @Nullable
        String issuer) {

    /** The name of a unit by its identity. */
    public static UnitName of(UnitId id) {
        return new UnitName(id.item(), id.serial(), id.otherIssuer());
    }

    UnitId id() {
        return UnitId.of(issuer, item, serial);
    }

    @Override
    public String toString() {
        return id().toString();
    }
}
