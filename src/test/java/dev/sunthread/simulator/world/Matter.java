package dev.sunthread.simulator.world;

import java.util.Set;
import java.util.TreeSet;

/**
 * What a body of matter consists of: all that is in it at present, and all that ever touched it or what is in it. What
 * is taken out of a unit leaves the present, but what it gave by touching stays.
 */
final class Matter {

    private final Set<Thing> present = new TreeSet<>();
    private final Set<Thing> touched = new TreeSet<>();

    static Matter of(Thing thing) {
        Matter matter = new Matter();
        matter.present.add(thing);
        matter.touched.add(thing);
        return matter;
    }

    Matter copy() {
        Matter copy = new Matter();
        copy.take(this);
        return copy;
    }

    void take(Matter other) {
        present.addAll(other.present);
        touched.addAll(other.touched);
    }

    void touch(Matter other) {
        touched.addAll(other.touched);
    }

    Set<Thing> present() {
        return present;
    }

    Set<Thing> touched() {
        return touched;
    }
}
