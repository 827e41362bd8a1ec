package dev.sunthread.genealogy.walk;

import dev.sunthread.kernel.TraceRef;
import java.util.Collection;

/** Tells since when a node counts as a suspect. */
@FunctionalInterface
public interface Starts {

    /** The instant, in microseconds; {@link Long#MIN_VALUE} for since ever. */
    long of(TraceRef node);

    /** Says which nodes will be asked for, so that they can be read together. */
    default void learn(Collection<TraceRef> nodes) {}
}
