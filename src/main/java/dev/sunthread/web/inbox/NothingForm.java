package dev.sunthread.web.inbox;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/** A person's word that a kept line tells nothing, with the reason. */
public record NothingForm(
        @NotBlank String line,
        @NotBlank String id,

        @NotBlank(message = "{line.say-why-nothing}") @Size(max = 1000, message = "{too-long}") @Nullable
        String reason) {}
