package dev.sunthread.access.signin;

import java.io.Serializable;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a person typed into a form that was not taken, until the page that it stands on is shown again.
 *
 * @param page where the form stands
 * @param action where it was sent to
 * @param mark whose sign-in had ended; absent if nobody knows
 */
public record KeptForm(String page, String action, @Nullable String mark, List<Typed> fields) implements Serializable {

    /** One field with one of its values. */
    public record Typed(String name, String value) implements Serializable {}

    int length() {
        return fields.stream()
                .mapToInt(field -> field.name().length() + field.value().length())
                .sum();
    }
}
