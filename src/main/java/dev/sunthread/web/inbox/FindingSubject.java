package dev.sunthread.web.inbox;

import org.jspecify.annotations.Nullable;

/** A lot, a container, a unit, or a run by its kind and number, that a finding touches. */
public record FindingSubject(
        String entry,
        int ordinal,
        @Nullable String lot,
        @Nullable String container,
        @Nullable String item,
        @Nullable String serial,
        @Nullable String issuer,
        @Nullable String what,
        @Nullable String name) {

    /** What it is and its name, in one line. */
    String words() {
        if (lot != null) {
            return "lot " + lot;
        } else if (container != null) {
            return "container " + container;
        }
        return serial == null ? what + " " + name : item + " " + serial;
    }
}
