package dev.sunthread.web.inbox;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/**
 * A kept line as a person mended it.
 *
 * @param line the id of the envelope that keeps the line
 * @param id the id of the settlement, given by the page, so that sending twice settles once
 */
public record MendForm(
        @NotBlank String line,
        @NotBlank String id,

        @NotBlank(message = "{line.give-text}") @Nullable String text,

        @NotBlank(message = "{line.say-mended}") @Size(max = 1000, message = "{too-long}") @Nullable
        String why) {}
