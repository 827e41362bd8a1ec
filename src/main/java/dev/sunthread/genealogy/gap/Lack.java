package dev.sunthread.genealogy.gap;

import dev.sunthread.genealogy.demand.RunDemand;
import dev.sunthread.genealogy.position.Untold;
import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A demand without a record: something had to happen, and nothing tells with what.
 *
 * @param items the items of which one lot, or one child, had to be taken
 * @param runs the recipes or specifications under one of which a run had to be done
 * @param where the time it must have happened in, the units it would have acted on, and its operation
 * @param position the position of the parent in which a child is not recorded; absent for all else
 * @param present when a unit surely had to be there, if it had to: what was in another recorded place then was not it
 * @param until when the child that is not recorded was surely gone; without end if it may be there still
 * @param made the lot or container of which it is not recorded what went into it; absent for all that units lack
 */
record Lack(
        Set<Long> items,
        Set<RunDemand> runs,
        Happening where,
        @Nullable String position,
        Moment present,
        long until,
        @Nullable TraceRef made) {

    static Lack ofMaterial(Set<Long> items, Happening where) {
        return new Lack(items, Set.of(), where, null, where.at(), Long.MAX_VALUE, null);
    }

    /** What of a load of the item, of which no record tells, went along with something later. */
    static Lack ofLoad(Untold load, Happening where, @Nullable TraceRef made) {
        return new Lack(Set.of(load.item()), Set.of(), where, null, load.at(), Long.MAX_VALUE, made);
    }

    static Lack ofRun(RunDemand run, Happening where) {
        return new Lack(Set.of(), Set.of(run), where, null, where.at(), Long.MAX_VALUE, null);
    }

    /**
     * What else was done on the carrier on which such a run was done, if it was, since it may have lain there from then
     * on; {@code within} is when the run must have been done.
     */
    static Lack ofTray(RunDemand run, Happening where, Moment within) {
        return new Lack(Set.of(), Set.of(run), where, null, within, Long.MAX_VALUE, null);
    }

    /** Whether it is what went along with a run that is lacking, not the run. */
    boolean isOfTray() {
        return !runs.isEmpty() && !present.equals(where.at());
    }

    static Lack ofChild(Set<Long> items, Happening where, String position, Moment present, long until) {
        return new Lack(items, Set.of(), where, position, present, until, null);
    }

    static Lack ofComponent(Set<Long> items, Happening where) {
        return new Lack(items, Set.of(), where, null, where.at(), Long.MAX_VALUE, where.node());
    }

    boolean isOfChild() {
        return position != null;
    }

    /** The parent that lacks a record of a child. */
    TraceRef parent() {
        return where.units().iterator().next();
    }

    /** The lot or container of which it is not recorded what went into it. */
    TraceRef ofMade() {
        return where.node();
    }

    /** When a lot that is lacking had to be there. */
    Moment ofLots() {
        return isOfChild() ? window() : present;
    }

    Moment window() {
        return where.at();
    }
}
