package dev.sunthread.station.label;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What an operator can tell the page beside scanning things; typed with a point before it, or scanned from a card. */
public enum Command {
    /** What is in hand is complete. */
    DONE,
    /** Take back what the last scan recorded. */
    UNDO,
    /** Put what is in hand aside; nothing more of it is recorded. */
    CANCEL,
    /** Take several units in hand until {@link #DONE}. */
    SEVERAL,
    /** The run in hand begins. */
    START,
    /** The run in hand is over. */
    END,
    /** What is loaded at the position in hand was taken off. */
    OFF,
    /** The position in hand was purged and checked. */
    CLEAN,
    /** Do an operation again that is done on a unit; the unit comes next. */
    AGAIN,
    /** Have the rule passed that refused the last scan; somebody who may judge signs next. */
    PASS,
    /** Ship units; the consignee comes next. */
    SHIP;

    /** The word that is scanned or typed for it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Command> of(String word) {
        return Arrays.stream(values())
                .filter(command -> command.word().equalsIgnoreCase(word))
                .findFirst();
    }
}
