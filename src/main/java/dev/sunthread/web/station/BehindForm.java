package dev.sunthread.web.station;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Size;
import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;

/**
 * A person's word that not everything done at a station is recorded.
 *
 * @param since until then everything is recorded, in the plant's zone
 */
public record BehindForm(
        @NotBlank String id,

        @NotBlank(message = "{behind.say-station}") @Nullable
        String station,

        @NotNull(message = "{behind.say-since}") @Nullable LocalDateTime since,

        @NotBlank(message = "{behind.say-why}") @Size(max = 1000, message = "{too-long}") @Nullable
        String why) {}
