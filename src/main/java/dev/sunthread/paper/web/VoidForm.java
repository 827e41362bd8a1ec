package dev.sunthread.paper.web;

import dev.sunthread.paper.Fate;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotEmpty;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A person's word that records will not be entered.
 *
 * @param code the sheet
 * @param id of the envelope, given by the page, so that sending twice says it once
 */
public record VoidForm(
        @NotBlank String code,
        @NotBlank String id,

        @NotEmpty(message = "{paper.void.choose}") @Nullable List<String> records,

        @NotNull(message = "{paper.void.fate-missing}") @Nullable
        Fate fate,

        @NotBlank(message = "{paper.void.say-why}") @Size(max = 1000, message = "{too-long}") @Nullable
        String why) {

    public List<String> chosen() {
        return records == null ? List.of() : records;
    }

    Fate reason() {
        return fate == null ? Fate.LOST : fate;
    }

    String stripped() {
        return why == null ? "" : why.strip().replaceAll("\\s+", " ");
    }
}
