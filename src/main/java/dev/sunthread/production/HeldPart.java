package dev.sunthread.production;

import dev.sunthread.kernel.TraceRef;

/** A hold on something that a unit is built together with. */
record HeldPart(long unit, Place place, long subject, String name, String reason) {

    /** How a thing on hold belongs to a unit. */
    enum Place {
        INSIDE,
        AROUND,
        LOT
    }

    TraceRef ref() {
        return place == Place.LOT ? TraceRef.lot(subject) : TraceRef.unit(subject);
    }
}
