package dev.sunthread.genealogy.reach;

import dev.sunthread.genealogy.records.Installation;
import dev.sunthread.genealogy.records.Removal;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Installations and removals as the tests of their edges record them. */
final class Placements {

    final List<Installation> installations = new ArrayList<>();
    final List<Removal> removals = new ArrayList<>();

    List<Edge> edges() {
        return InstallationEdges.of(installations, removals);
    }

    Placements in(TraceRef child, TraceRef parent, @Nullable String position, long at) {
        installations.add(new Installation(installations.size(), child, parent, position, Moment.at(at)));
        return this;
    }

    Placements out(TraceRef child, TraceRef parent, @Nullable String position, long at) {
        return out(child, parent, position, Moment.at(at));
    }

    Placements out(TraceRef child, TraceRef parent, @Nullable String position, Moment at) {
        removals.add(new Removal(100 + removals.size(), child, parent, position, at));
        return this;
    }

    Placements anything(Random random, TraceRef parent) {
        for (int fact = 0; fact < 8; fact++) {
            TraceRef child = TraceRef.unit(random.nextInt(2));
            String position = random.nextInt(3) == 0 ? null : "1";
            if (random.nextBoolean()) {
                in(child, parent, position, random.nextInt(6));
            } else {
                out(child, parent, position, random.nextInt(6));
            }
        }
        return this;
    }

    void shuffle(Random random) {
        Collections.shuffle(installations, random);
        Collections.shuffle(removals, random);
    }
}
