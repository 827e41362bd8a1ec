package dev.sunthread.scan;

import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import org.jspecify.annotations.Nullable;

/** What a person said that a scanned text means. */
public record ScanChoice(
        @Field(value = "The text as it was scanned", text = TextForm.RAW)
        String scanned,

        @Field("What kind of thing it was taken for; a reading is the same label with its separators put right")
        What what,

        @Field(value = "The name of that thing, or the reading", text = TextForm.RAW)
        String name,

        @Field("The item, of a unit") @Nullable String item,

        @Field("Who issued the serial, of a unit, if not this plant") @Nullable
        String issuer) {

    public ScanChoice {
        if ((what == What.UNIT) != (item != null) || item == null && issuer != null) {
            throw new Contradiction(
                    "item",
                    item == null ? "is missing for a unit" : "is given for what is no unit",
                    "Give item and issuer for a unit, and only for one");
        }
    }

    /** What a scanned text can be taken for. */
    public enum What {
        UNIT,
        LOT,
        SUPPLIER_LOT,
        CONTAINER,
        CARRIER,
        ITEM,
        STATION,
        POSITION,
        OTHER,
        READING
    }
}
