package dev.sunthread.production;

import org.jspecify.annotations.Nullable;

/** Something that a body puts on a carrier or takes off it: a unit, or another carrier. */
interface CarriedName {

    @Nullable
    UnitName unit();

    @Nullable
    String carrier();
}
