package dev.sunthread.production;

import dev.sunthread.catalog.Demand;
import java.time.OffsetDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Says which units have what a route demands of them; implemented once for each way, by the module that records it. */
public interface Prerequisite {

    /** The way of demand that it knows of. */
    Demand.Way way();

    /**
     * Which of these units have what is demanded by a time, as known now.
     *
     * @param units since when it counts for each: what began before its own step began, or began anew, does not meet it
     */
    Set<Long> met(Demand demand, Map<Long, OffsetDateTime> units, OffsetDateTime at);

    /** What is recorded of a demand that a unit does not have met, and why it does not count; nothing if nothing is. */
    Optional<String> shortfall(Demand demand, Map.Entry<Long, OffsetDateTime> unit, OffsetDateTime at);
}
