package dev.sunthread.catalog;

import org.jspecify.annotations.Nullable;

/**
 * A part or material number.
 *
 * @param level the level that a serial of it is counted at, such as a receiver or a panel; absent unless tracked by
 *     serial
 * @param unitOfMeasure the unit its quantities are stated in
 */
public record Item(
        long id, String number, Tracking tracking, @Nullable String level, String unitOfMeasure) {}
