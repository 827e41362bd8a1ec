package dev.sunthread.genealogy;

import dev.sunthread.kernel.TraceKind;

/** A recipe or specification under which a run is done, by its number. */
record RunDemand(TraceKind run, long definition) {

    static RunDemand recipe(long number) {
        return new RunDemand(TraceKind.CURE_RUN, number);
    }

    static RunDemand specification(long number) {
        return new RunDemand(TraceKind.TEST_RUN, number);
    }
}
