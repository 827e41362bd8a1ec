package dev.sunthread.ledger;

import java.time.OffsetDateTime;
import org.jspecify.annotations.Nullable;

/**
 * When an entry came into the ledger, and who handed it in. Neither is part of the envelope: it says what its sender says.
 *
 * @param by the mark of the person who was signed in or of the machine; nothing for what the program did by itself
 */
public record Recorded(OffsetDateTime at, @Nullable String by) {}
