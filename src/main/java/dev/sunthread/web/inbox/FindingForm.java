package dev.sunthread.web.inbox;

import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.Size;
import org.jspecify.annotations.Nullable;

/** A person's word on a finding: what was found out and done. */
public record FindingForm(
        @NotBlank String entry,
        int finding,
        @NotBlank String id,

        @NotBlank(message = "{findings.say-why}") @Size(max = 1000, message = "{too-long}") @Nullable
        String why) {

    /** Whether it is about this finding of this entry. */
    public boolean isAbout(String otherEntry, int otherFinding) {
        return entry.equals(otherEntry) && finding == otherFinding;
    }
}
