package dev.sunthread.genealogy.records;

import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads how lots and containers came to be, and how long they were in the plant. */
public interface LotRecords {

    /** What was made or filled from these lots and containers, or recovered from these units. */
    List<Making> from(Collection<TraceRef> sources);

    /** What these lots and containers were made or filled from. */
    List<Making> into(Collection<TraceRef> targets);

    /** Every lot of these items, and every lot whose item is not recorded, of which there is a sign. */
    List<LotSpan> spansOfItems(Collection<Long> items);

    /** One for each of these lots of which there is a sign, and for each item it is recorded as. */
    List<LotSpan> spansOf(Collection<Long> lots);

    /** Blends whose formula demands one of these items. */
    List<Blending> blendsDemanding(Collection<Long> components);

    /** Those of these lots that were blended by a formula. */
    List<Blending> blends(Collection<Long> lots);

    /** Every lot of which there is a sign and no record of where it came from. */
    List<Unmade> unmade();

    /**
     * What a container was named with, for each lot that no record fills into it before. A use tells it only of a
     * container that no record fills at all.
     */
    List<Making> labelled();

    /** Every container of which there is a sign and no record that fills it. */
    List<Unfilled> unfilled();

    /** How lots of each item are recorded to have come about: the items they were made of, none of what was received. */
    Map<Long, Set<Long>> madeOf();

    /** Every item of what was loaded at a position that mixes, and may have been unloaded as anything. */
    Set<Long> itemsMixed();

    /** Every item that a lot is recorded as. */
    Set<Long> items();

    /** The unit of measure of every item. */
    Map<Long, String> unitsOfItems();
}
