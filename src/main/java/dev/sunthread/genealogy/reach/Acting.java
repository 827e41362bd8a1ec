package dev.sunthread.genealogy.reach;

import dev.sunthread.genealogy.walk.Edge;

/**
 * An edge along which something acts on a unit, and how it may go on from there by ways that no record tells.
 *
 * @param around whether it acted on what was around the unit too: what was reached from above did not lead further up
 * @param inside whether it acted on what was inside the unit too
 */
public record Acting(Edge edge, boolean around, boolean inside) {

    /** One that goes no further than its edge. */
    public static Acting only(Edge edge) {
        return new Acting(edge, false, false);
    }
}
