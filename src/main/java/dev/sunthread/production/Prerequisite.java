package dev.sunthread.production;

import dev.sunthread.catalog.Demand;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.Optional;
import java.util.Set;

/** Says which units have what a route demands of them; implemented once for each way, by the module that records it. */
public interface Prerequisite {

    /** The way of demand that it knows of. */
    Demand.Way way();

    /** Which of these units have what is demanded by a time, as known now. */
    Set<Long> met(Demand demand, Collection<Long> units, OffsetDateTime at);

    /** What is recorded of a demand that a unit does not have met, and why it does not count; nothing if nothing is. */
    Optional<String> shortfall(Demand demand, long unit, OffsetDateTime at);
}
