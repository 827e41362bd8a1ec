package dev.sunthread.materials.incoming;

import java.time.OffsetDateTime;

/**
 * A document that was attached, without its bytes.
 *
 * @param size in bytes
 * @param entry the id of the envelope that brought it
 */
public record Attached(String sha256, String name, String mediaType, long size, OffsetDateTime at, String entry) {}
