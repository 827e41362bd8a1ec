package dev.sunthread.catalog.judging;

import dev.sunthread.catalog.FoundError;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Which runs are to be judged, and by what.
 *
 * @param code the recipe or specification they were done under
 * @param revision the revision they are judged by; absent for the one in force when each began
 * @param equipment the equipment they were done with; absent for any
 * @param from the earliest that they ended, absent for since ever
 * @param to the latest that they began, absent for until ever
 * @param errors the errors of the equipment to judge by; none if those that checks found count
 */
public record Question(
        String code,
        @Nullable String revision,
        @Nullable String equipment,
        @Nullable OffsetDateTime from,
        @Nullable OffsetDateTime to,
        List<FoundError> errors) {}
