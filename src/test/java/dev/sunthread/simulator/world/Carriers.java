package dev.sunthread.simulator.world;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** What is on which tray or rack at present; trays can be on racks. */
final class Carriers {

    private final Map<String, String> under = new LinkedHashMap<>();

    void load(String carried, String carrier) {
        under.put(carried, carrier);
    }

    void unload(String carried) {
        under.remove(carried);
    }

    @Nullable
    String under(String carried) {
        return under.get(carried);
    }

    Set<String> on(String carrier) {
        return under.entrySet().stream()
                .filter(one -> one.getValue().equals(carrier))
                .map(Map.Entry::getKey)
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** Units and carriers on a carrier at any depth. */
    Set<String> allOn(String carrier) {
        Set<String> all = on(carrier);
        for (String one : Set.copyOf(all)) {
            all.addAll(allOn(one));
        }
        return all;
    }
}
