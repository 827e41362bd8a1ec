package dev.sunthread.materials.stock;

import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * What is known of a container at a cut-off.
 *
 * @param id its internal number
 * @param openedAt when it was first opened
 * @param place where it was last put
 * @param outTime up to the moment asked for, or to its end
 * @param ending in words, where its end is recorded
 */
public record ContainerState(
        long id,
        String label,
        @Nullable OffsetDateTime openedAt,
        @Nullable String place,
        @Nullable Storage storage,
        OutTime outTime,
        @Nullable OffsetDateTime endedAt,
        @Nullable String ending) {}
