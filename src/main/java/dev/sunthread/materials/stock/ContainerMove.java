package dev.sunthread.materials.stock;

import java.time.OffsetDateTime;

/**
 * A container was put somewhere, and stays there until its next move.
 *
 * @param entry the id of the envelope that told it
 */
public record ContainerMove(String place, Storage storage, OffsetDateTime at, String entry) {}
