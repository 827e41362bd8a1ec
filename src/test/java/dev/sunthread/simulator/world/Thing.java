package dev.sunthread.simulator.world;

/** Something that can be in, or can have acted on, something else; named as its label, serial or number says. */
public record Thing(Kind kind, String name) implements Comparable<Thing> {

    /** What it is. A step is named by the id of its record. */
    public enum Kind {
        LOT,
        CONTAINER,
        UNIT,
        CURE_RUN,
        TEST_RUN,
        STEP
    }

    public static Thing lot(String name) {
        return new Thing(Kind.LOT, name);
    }

    public static Thing container(String label) {
        return new Thing(Kind.CONTAINER, label);
    }

    public static Thing unit(String serial) {
        return new Thing(Kind.UNIT, serial);
    }

    @Override
    public int compareTo(Thing other) {
        int byKind = kind.compareTo(other.kind);
        return byKind != 0 ? byKind : name.compareTo(other.name);
    }
}
