package dev.sunthread.genealogy;

import java.util.Locale;

/** How far an answer is, in the order in which it is made. */
public enum Stage {
    WAITING,
    SUSPECTS,
    SEARCH,
    SHIPMENTS,
    LINES,
    KEEPING;

    /** As a message and a program name it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
