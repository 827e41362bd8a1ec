package dev.sunthread.genealogy.records;

import dev.sunthread.genealogy.position.Changes;
import dev.sunthread.genealogy.position.PositionTimeline;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads what steps and unloadings took in, and what the records of positions say of it. */
public interface UseRecords {

    /** The material that these steps, by their nodes, took in. */
    List<RecordedUse> in(Collection<TraceRef> steps);

    /**
     * Uses that name one of the lots or containers, or may have drawn from one of the positions; the latter of these
     * items only, if they are given. Unloading a position into a new lot counts as a use.
     */
    List<RecordedUse> thatMayHaveTaken(
            Collection<TraceRef> material, Collection<StationPosition> positions, Optional<Set<Long>> items);

    /** Unloadings of positions that went on as one of these lots. */
    List<RecordedUse> unloadedInto(Collection<Long> lots);

    /** Every use of one of these items that no lot was scanned for, or during which what was scanned may have come off. */
    List<RecordedUse> unscanned(Collection<Long> items);

    /** Every item that was ever taken in without its lot being scanned. */
    Set<Long> itemsUnscanned();

    /** Every use that names one of these positions, by their numbers. */
    List<RecordedUse> at(Collection<Long> positions);

    /** Every position that the station ever had. */
    List<StationPosition> positionsOf(long station);

    /** These positions, by their numbers. */
    List<StationPosition> positions(Collection<Long> numbers);

    /** Every position where one of the lots was ever said to be. */
    List<StationPosition> positionsThatHeld(Collection<Long> lots);

    /** Positions at which one of these items was used, and something without a name came off that no charge tells. */
    List<StationPosition> unloadedOfNoRecord(Collection<Long> items);

    /** What was loaded at a position and taken off. */
    Changes changes(StationPosition position);

    /** What the records of a position say about where a use there drew from. */
    PositionTimeline timeline(StationPosition position);
}
