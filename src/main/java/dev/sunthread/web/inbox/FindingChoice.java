package dev.sunthread.web.inbox;

import org.jspecify.annotations.Nullable;

/**
 * Which open findings a list shows.
 *
 * @param entry only those that this entry raised
 * @param answer only those that touched this answer of a trace
 * @param page from 1
 */
public record FindingChoice(
        @Nullable String entry,
        @Nullable String answer,
        @Nullable Integer page) {

    /** Only those of one entry. */
    static FindingChoice of(String entry) {
        return new FindingChoice(entry, null, null);
    }
}
