package dev.sunthread.genealogy.records;

import dev.sunthread.genealogy.demand.UnitDemand;
import dev.sunthread.genealogy.walk.Moment;
import java.util.Collection;
import java.util.List;
import java.util.Set;

/** Reads the signs that units give of themselves. */
public interface SignRecords {

    List<UnitSigns> of(Collection<Long> units);

    /** Units of these items that may have been in the plant, and not in a recorded place, at some time of the window. */
    List<UnitSigns> thatMayHaveBeenFree(Collection<Long> items, Moment window);

    /** Every unit of which the first sign may be this early. */
    List<UnitSigns> thereBy(long instant);

    /** Units that may lack something of what is demanded: all but those that surely have it, or don't need it yet. */
    Set<Long> thatMayLack(Collection<UnitDemand> demands);

    /** Of these units, those of which more than one birth is recorded that isn't the same told again by one station. */
    Set<Long> bornAgain(Collection<Long> units);
}
