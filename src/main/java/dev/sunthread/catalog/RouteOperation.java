package dev.sunthread.catalog;

import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** An operation of a route as a body tells it. */
record RouteOperation(
        @Field("The operation's code") String operation,

        @Field(value = "What people call it", text = TextForm.NAME)
        String name,

        @Field("The items it takes in") List<String> consumes,

        @Field("Items approved to be taken in instead of one that it takes in")
        List<Alternate> alternates,

        @Field("The recipes of the cures it demands") List<String> cures,
        @Field("The specifications of the tests it demands") List<String> tests,

        @Field("The values it measures or sets, with what is good")
        List<ValueBounds> values,

        @Field("What it reaches; absent if all that is inside the unit and around it") @Nullable
        Reach reach,

        @Field(value = "The stations where it may be done; any if none is named", atMost = 500)
        List<String> stations,

        @Field(value = "How long after the end of earlier operations of the unit it may begin", atMost = 100)
        List<RouteWindow> windows,

        @Field("Whether who does it must be qualified for it; absent for no") @Nullable
        Boolean qualified,

        @Field("Whether it must not be done while the station can't ask whether it may; absent for no") @Nullable
        Boolean onlineOnly,

        @Field(value = "What can hurt there, beside what local rules say", atMost = 10)
        List<Caution> cautions) {

    RouteOperation {
        List<String> taken = consumes;
        alternates.stream()
                .filter(alternate -> !taken.contains(alternate.item()))
                .findFirst()
                .ifPresent(alternate -> {
                    throw new Contradiction(
                            "alternates",
                            "names \"" + alternate.item() + "\", which the operation does not take in",
                            "Name it among the items it takes in, or take the alternate out");
                });
    }

    /** What an operation acts on. */
    enum Reach {
        ALL_INSIDE,
        UNIT_ALONE
    }

    /** An item approved in place of another. */
    record Alternate(
            @Field("The item that is taken in") String item,
            @Field("The item that may be taken in instead") String alternate) {

        Alternate {
            if (item.equals(alternate)) {
                throw new Contradiction("alternate", "is the item itself", "Name another item");
            }
        }
    }
}
