package dev.sunthread.genealogy.position;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.position.Change.Charge;
import dev.sunthread.genealogy.position.Change.Discharge;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** One position of a station as the tests record it; everything charged is adhesive unless told otherwise. */
final class Valve {

    static final long ADHESIVE = 1;
    static final long PRIMER = 2;

    final List<Charge> charges = new ArrayList<>();
    final List<Discharge> discharges = new ArrayList<>();
    final List<Moment> cleanPoints = new ArrayList<>();
    final List<Moment> uses = new ArrayList<>();
    final List<Use> scans = new ArrayList<>();

    Valve on(TraceRef lot, long at) {
        return on(lot, ADHESIVE, Moment.at(at));
    }

    Valve on(TraceRef lot, @Nullable Long item, Moment at) {
        charges.add(new Charge(lot, item, at, charges.size()));
        return this;
    }

    Valve off(@Nullable TraceRef lot, long at) {
        return off(lot, Moment.at(at));
    }

    Valve off(@Nullable TraceRef lot, Moment at) {
        discharges.add(new Discharge(lot, at, discharges.size()));
        return this;
    }

    Valve cleaned(long at) {
        cleanPoints.add(Moment.at(at));
        return this;
    }

    Valve used(long... moments) {
        for (long at : moments) {
            uses.add(Moment.at(at));
        }
        return this;
    }

    /** A step that drew from when it began until it ended. */
    Valve usedThrough(long begin, long end) {
        uses.add(new Moment(begin, end));
        return this;
    }

    Valve scanned(TraceRef lot, long at) {
        scans.add(new Use(Moment.at(at), ADHESIVE, lot));
        return this;
    }

    PositionTimeline timeline() {
        Stream<Use> unscanned = uses.stream().map(at -> new Use(at, ADHESIVE, null));
        return PositionTimeline.of(
                "valve 2",
                new Changes(charges, discharges),
                cleanPoints,
                Stream.concat(unscanned, scans.stream()).toList(),
                CarryOverLimits.NONE);
    }

    List<Untold> untold(long at) {
        return timeline().untold(new Use(Moment.at(at), ADHESIVE, null));
    }

    Map<TraceRef, Certainty> at(long at) {
        return at(Moment.at(at), null);
    }

    Map<TraceRef, Certainty> at(Moment at, @Nullable TraceRef scanned) {
        return classes(timeline().candidates(new Use(at, ADHESIVE, scanned)));
    }

    @Override
    public String toString() {
        return "on %s, off %s, cleaned %s, used %s".formatted(charges, discharges, cleanPoints, uses);
    }

    static Map<TraceRef, Certainty> classes(List<Candidate> candidates) {
        Map<TraceRef, Certainty> classes = new TreeMap<>();
        candidates.forEach(candidate -> classes.put(candidate.lot(), candidate.certainty()));
        return classes;
    }
}
