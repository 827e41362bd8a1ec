package dev.sunthread.catalog.recipe;

import dev.sunthread.kernel.verdict.Span;
import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import java.math.BigDecimal;

/** From one value to another, both included. */
public record Stretch(
        @Field("The lower end") BigDecimal from,
        @Field("The upper end") BigDecimal to) {

    public Stretch {
        if (from.compareTo(to) > 0) {
            throw new Contradiction("from", "is more than to", "Give the lower end first");
        }
    }

    public Span span() {
        return new Span(from.doubleValue(), to.doubleValue());
    }
}
