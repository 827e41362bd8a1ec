package dev.sunthread.materials;

import java.time.Duration;
import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * How old a container's content is at a moment.
 *
 * @param openedAt when it was opened, at the latest when it was first loaded; absent if it never was
 * @param out how long it was at room temperature
 * @param endedAt when nothing was left in it any more; absent if it is not ended
 */
public record ContainerAge(
        @Nullable OffsetDateTime openedAt,
        Duration out,
        @Nullable OffsetDateTime endedAt) {}
