package dev.sunthread.web.inbox;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/**
 * A person's word that no line of a file that waits tells anything, with the reason.
 *
 * @param cutoff the ledger position at which the person saw them: what came later is not meant
 * @param id what the ids of the settlements are made of, so that sending twice settles once
 */
public record FileForm(
        @NotBlank String file,
        long cutoff,
        @NotBlank String id,

        @NotBlank(message = "{line.say-why-nothing}") @Size(max = 1000, message = "{too-long}") @Nullable
        String reason) {}
