package dev.sunthread.genealogy.records;

import dev.sunthread.genealogy.demand.RunDemand;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.List;

/** Reads steps, cure runs and test runs: what may give something to the units they name. */
public interface HappeningRecords {

    /** Those that name one of these units or carriers. */
    List<Happening> naming(Collection<TraceRef> unitsAndCarriers);

    /** Those with these nodes. */
    List<Happening> of(Collection<TraceRef> nodes);

    /** Every cure run and test run that was done under one of these. */
    List<Happening> under(Collection<RunDemand> demands);
}
