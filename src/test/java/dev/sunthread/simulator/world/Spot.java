package dev.sunthread.simulator.world;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** What is loaded at a position, and what earlier loads left behind since the last purge. */
final class Spot {

    @Nullable
    Source loaded;

    private int usesSinceChange;
    private final Map<Source, Integer> usesSinceLeft = new HashMap<>();
    final Map<Source, Matter> leftBehind = new LinkedHashMap<>();

    void load(Source source) {
        loaded = source;
        usesSinceChange = 0;
    }

    void unload(Matter content) {
        Source source = loaded;
        if (source != null) {
            leftBehind.merge(source, content.copy(), (before, now) -> {
                before.take(now);
                return before;
            });
            usesSinceLeft.put(source, 0);
        }
        loaded = null;
    }

    Set<Source> left() {
        return leftBehind.keySet();
    }

    void used() {
        usesSinceChange++;
        usesSinceLeft.replaceAll((source, uses) -> uses + 1);
    }

    int usesSinceChange() {
        return usesSinceChange;
    }

    int usesSinceLeft(Source source) {
        return usesSinceLeft.getOrDefault(source, 0);
    }
}
