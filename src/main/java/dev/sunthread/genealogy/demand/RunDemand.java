package dev.sunthread.genealogy.demand;

import dev.sunthread.kernel.TraceKind;

/** A recipe or specification under which a run is done, by its number. */
public record RunDemand(TraceKind run, long definition) {

    public static RunDemand recipe(long number) {
        return new RunDemand(TraceKind.CURE_RUN, number);
    }

    public static RunDemand specification(long number) {
        return new RunDemand(TraceKind.TEST_RUN, number);
    }
}
