package dev.sunthread.simulator;

import dev.sunthread.simulator.world.Layout;
import dev.sunthread.simulator.world.Layout.Operation;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** How far one unit has come on its route. */
final class Unit {

    final String name;
    final String item;
    final Set<String> cures = new HashSet<>();
    final List<String> done = new ArrayList<>();
    boolean outOfPlant;
    boolean scrapped;

    Unit(String name, String item) {
        this.name = name;
        this.item = item;
    }

    /** The operation that comes next; none while a demanded cure is due, or at the end of the route. */
    @Nullable
    Operation next() {
        List<Operation> route = Layout.route(item);
        return dueCure() != null || done.size() == route.size() ? null : route.get(done.size());
    }

    /** The recipe that its last operation demands and that it has not been through. */
    @Nullable
    String dueCure() {
        if (done.isEmpty()) {
            return null;
        }
        String cure = Layout.route(item).get(done.size() - 1).cure();
        return cure == null || cures.contains(cure) ? null : cure;
    }

    /** Whether it may go into its parent: all is done but what can be done to it alone later. */
    boolean isReady() {
        Operation next = next();
        return dueCure() == null && (next == null || next.alone());
    }

    boolean isMarked() {
        return next() == null && dueCure() == null;
    }
}
