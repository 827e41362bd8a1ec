package dev.sunthread.paper.web;

import dev.sunthread.kernel.Refused;
import dev.sunthread.paper.FormKind;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import org.jspecify.annotations.Nullable;

/**
 * Which form a person asks for.
 *
 * @param what the word of a {@link FormKind}, or an item and the code of an operation with two spaces between them, which
 *     neither can hold
 * @param count how many records
 */
public record PrintForm(
        @Nullable String station,
        @Nullable String what,

        @Min(value = 1, message = "{paper.new.count}") @Max(value = 60, message = "{paper.new.count}") @Nullable
        Integer count) {

    private static final String BETWEEN = "  ";

    public FormKind kind() {
        if (what == null) {
            throw unknown();
        }
        if (what.contains(BETWEEN)) {
            return FormKind.OPERATION;
        }
        try {
            return FormKind.valueOf(what);
        } catch (IllegalArgumentException e) {
            throw unknown();
        }
    }

    private static Refused unknown() {
        return new Refused("It is not said what the records are for", "Choose an operation or a kind of scan");
    }

    @Nullable
    String item() {
        return part(0);
    }

    @Nullable
    String operation() {
        return part(1);
    }

    private @Nullable String part(int index) {
        return what != null && what.contains(BETWEEN) ? what.split(BETWEEN, 2)[index] : null;
    }

    public int howMany() {
        return count == null ? 12 : count;
    }

    public boolean isComplete() {
        return station != null && !station.isBlank() && what != null && !what.isBlank();
    }
}
