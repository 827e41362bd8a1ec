package dev.sunthread.web.station;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/**
 * A person's word that everything done at a station that was behind is recorded now.
 *
 * @param entry the id of the envelope that said that it was behind
 */
public record CaughtUpForm(
        @NotBlank String entry,
        @NotBlank String id,

        @NotBlank(message = "{behind.say-how}") @Size(max = 1000, message = "{too-long}") @Nullable
        String why) {}
