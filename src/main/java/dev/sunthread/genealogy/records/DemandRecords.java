package dev.sunthread.genealogy.records;

import dev.sunthread.genealogy.demand.Deviation;
import dev.sunthread.genealogy.demand.RouteRevision;
import dev.sunthread.genealogy.demand.RunDemand;
import dev.sunthread.genealogy.demand.StructureRevision;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Reads what released routes and structures demand, and what signed deviations say was not done. */
public interface DemandRecords {

    /** Every revision of the routes of these items. */
    List<RouteRevision> routes(Collection<Long> items);

    /** Every revision of the structures of these items. */
    List<StructureRevision> structures(Collection<Long> items);

    /** Items of units whose route or structure ever demanded one of these, or accepts one as an alternate. */
    Set<Long> demanding(Collection<Long> items);

    /** Items tracked by lot whose formula ever demanded one of these. */
    Set<Long> mixedOf(Collection<Long> components);

    /** What the formulas of these items demand, of those that are tracked by lot. */
    Set<Long> componentsOf(Collection<Long> items);

    /** What is approved for use in place of one of these, or which one of these may stand in for; themselves too. */
    Set<Long> alternatesOf(Collection<Long> items);

    /** As {@link #mixedOf}, and what is mixed of those, at any depth. */
    default Set<Long> allMixedOf(Collection<Long> components) {
        return atAnyDepth(components, this::mixedOf);
    }

    /** As {@link #componentsOf}, and the components of those, at any depth. */
    default Set<Long> allComponentsOf(Collection<Long> items) {
        return atAnyDepth(items, this::componentsOf);
    }

    private static Set<Long> atAnyDepth(Collection<Long> items, UnaryOperator<Collection<Long>> next) {
        Set<Long> all = new HashSet<>();
        Collection<Long> found = next.apply(items);
        while (all.addAll(found)) {
            found = next.apply(found);
        }
        return all;
    }

    /** Items of units whose route ever demanded one of these runs. */
    Set<Long> demandingRuns(Collection<RunDemand> demands);

    /** Every revision of a route in which some operation acts on a unit alone. */
    List<RouteRevision> actingAlone();

    /** Every item that a route, a structure or a formula ever demanded, or accepted as an alternate. */
    Set<Long> demandedItems();

    /** What is stated of these units and lots. */
    List<Deviation> deviations(Collection<TraceRef> nodes);
}
