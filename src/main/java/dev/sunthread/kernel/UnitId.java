package dev.sunthread.kernel;

import org.jspecify.annotations.Nullable;

/**
 * The identity of a unit: who issued the serial, for which item, and the serial itself. Case and leading zeros count;
 * an absent issuer means this plant.
 */
public record UnitId(String issuer, String item, String serial) {

    /** The issuer of every serial that names none: the plant that this database belongs to. */
    public static final String THIS_PLANT = "plant";

    public static UnitId of(@Nullable String issuer, String item, String serial) {
        return new UnitId(issuer == null ? THIS_PLANT : issuer, item, serial);
    }

    /** Who issued the serial, if it is another than this plant. */
    public @Nullable String otherIssuer() {
        return issuer.equals(THIS_PLANT) ? null : issuer;
    }

    /** The serial as people say it: item and serial, with the issuer only if it is another one. */
    @Override
    public String toString() {
        String own = item + " " + serial;
        return otherIssuer() == null ? own : own + " of " + issuer;
    }
}
