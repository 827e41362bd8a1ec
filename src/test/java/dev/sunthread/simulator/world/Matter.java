package dev.sunthread.simulator.world;

import java.util.BitSet;

/**
 * What a body of matter consists of: all that is in it at present, and all that ever touched it or what is in it. What
 * is taken out of a unit leaves the present, but what it gave by touching stays.
 */
final class Matter {

    private final BitSet present = new BitSet();
    private final BitSet touched = new BitSet();

    static Matter of(int thing) {
        Matter matter = new Matter();
        matter.present.set(thing);
        matter.touched.set(thing);
        return matter;
    }

    Matter copy() {
        Matter copy = new Matter();
        copy.take(this);
        return copy;
    }

    void take(Matter other) {
        present.or(other.present);
        touched.or(other.touched);
    }

    void touch(Matter other) {
        touched.or(other.touched);
    }

    BitSet present() {
        return present;
    }

    BitSet touched() {
        return touched;
    }
}
