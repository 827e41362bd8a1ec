package dev.sunthread.genealogy.gap;

import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** A position of a parent of which no record tells what was in it, for a time; it held one of the candidates of a gap. */
record Vacancy(Gap gap, TraceRef parent, String position, Moment time) {

    /** Parts of a time beyond this many are taken together, which tells more and never less. */
    private static final int MOST = 16;

    /**
     * A part of the time of a vacancy. What acts on a child acts at that instant on what the child is in, and on what is
     * inside that then, and the other way round; so a node stands for a time in which that stays the same.
     */
    record Stretch(Vacancy vacancy, TraceKind kind, Moment time) {

        TraceRef node() {
            Vacancy of = vacancy;
            return new TraceRef(
                    kind,
                    Gap.number(
                            of.gap.node().id() + " " + of.parent + " " + of.position + " " + of.time + time.early()));
        }
    }

    static Vacancy of(Gap gap, Lack lack) {
        long since = lack.window().early();
        long until = lack.until() == Long.MAX_VALUE ? Long.MAX_VALUE : lack.until() - 1;
        return new Vacancy(
                gap,
                lack.parent(),
                String.valueOf(lack.position()),
                new Moment(since, Math.max(until, lack.window().late())));
    }

    /** What acts on the parent meanwhile. */
    Happening acting(Moment meanwhile) {
        return new Happening(
                parent,
                0,
                Moment.at(meanwhile.early()),
                Moment.at(meanwhile.late()),
                Set.of(parent),
                Set.of(),
                null,
                null);
    }

    /** Its time, parted at these instants, each the first of a part. */
    List<Stretch> stretches(TraceKind kind, Collection<Long> instants) {
        TreeSet<Long> within = new TreeSet<>(instants);
        within.removeIf(instant -> instant <= time.early() || instant > time.late());
        List<Long> begins = new ArrayList<>(within);
        int step = (begins.size() + MOST - 1) / MOST;
        List<Stretch> stretches = new ArrayList<>();
        long from = time.early();
        for (int i = 0; i < begins.size(); i += step) {
            stretches.add(new Stretch(this, kind, new Moment(from, begins.get(i) - 1)));
            from = begins.get(i);
        }
        stretches.add(new Stretch(this, kind, new Moment(from, time.late())));
        return stretches;
    }
}
