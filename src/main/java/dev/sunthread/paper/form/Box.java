package dev.sunthread.paper.form;

import java.util.List;

/**
 * A box of a form to write in.
 *
 * @param name by which it is told from the others of the form
 * @param label the key of its label
 * @param with what the label names
 * @param holds what is written in it
 * @param isNeeded whether a record without it can't be understood
 */
public record Box(String name, String label, List<String> with, Holds holds, boolean isNeeded) {

    /** What a box is for. */
    public enum Holds {
        /** A unit, by its serial. */
        UNIT,
        /** A unit or a carrier. */
        LOAD,
        /** A unit, or the lot or container of a part without a serial. */
        PART,
        /** A lot or a container. */
        MATERIAL,
        /** A position of the station. */
        POSITION,
        /** A number. */
        VALUE,
        TEXT
    }

    static Box needed(String name, Holds holds, String label, String... with) {
        return new Box(name, label, List.of(with), holds, true);
    }

    static Box optional(String name, Holds holds, String label, String... with) {
        return new Box(name, label, List.of(with), holds, false);
    }
}
