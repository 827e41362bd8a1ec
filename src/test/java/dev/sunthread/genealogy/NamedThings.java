package dev.sunthread.genealogy;

import dev.sunthread.kernel.TraceRef;
import dev.sunthread.simulator.world.Thing;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Everything that some readable record of a simulated plant names, by its name without the plant's. */
final class NamedThings {

    private static final Map<String, Thing.Kind> FIELDS = Map.of(
            "lot", Thing.Kind.LOT,
            "lots", Thing.Kind.LOT,
            "container", Thing.Kind.CONTAINER,
            "label", Thing.Kind.CONTAINER,
            "serial", Thing.Kind.UNIT);

    private final String plant;
    private final Set<Thing> things = new TreeSet<>();

    NamedThings(String plant, List<Said> said) {
        this.plant = plant;
        said.stream().filter(one -> !one.kind().equals("kept-line")).forEach(one -> {
            collect("", one.body());
            if (one.body().get("into") instanceof String lot) {
                add(Thing.Kind.LOT, lot);
            }
        });
        // a run or step that is taken back never was
        FactsByHand facts = new FactsByHand(said);
        facts.of("cure-run").forEach(one -> add(Thing.Kind.CURE_RUN, one.text("run")));
        facts.of("test-run").forEach(one -> add(Thing.Kind.TEST_RUN, one.text("run")));
        facts.of("step").forEach(one -> add(Thing.Kind.STEP, one.id()));
    }

    Map<Thing, TraceRef> nodes(Numbers numbers) {
        Map<Thing, TraceRef> nodes = new TreeMap<>();
        things.forEach(thing -> nodes.put(thing, node(thing, numbers)));
        return nodes;
    }

    private TraceRef node(Thing thing, Numbers numbers) {
        String told = plant + "-" + thing.name();
        return thing.kind() == Thing.Kind.STEP
                ? TraceRef.step(numbers.entry(told))
                : numbers.node(SimulatedTrace.kind(thing.kind()), told);
    }

    private void collect(String field, Object value) {
        if (value instanceof Map<?, ?> map) {
            map.forEach((key, inner) -> collect(String.valueOf(key), Objects.requireNonNull(inner)));
        } else if (value instanceof List<?> list) {
            list.forEach(inner -> collect(field, Objects.requireNonNull(inner)));
        } else if (value instanceof String name && FIELDS.containsKey(field)) {
            add(Objects.requireNonNull(FIELDS.get(field)), name);
        }
    }

    private void add(Thing.Kind kind, String told) {
        things.add(new Thing(kind, told.substring(plant.length() + 1)));
    }

    static Set<String> texts(List<Said> said) {
        Set<String> texts = new HashSet<>();
        said.stream().filter(one -> !one.kind().equals("kept-line")).forEach(one -> texts(one.body(), texts));
        return texts;
    }

    private static void texts(Object value, Set<String> texts) {
        if (value instanceof Map<?, ?> map) {
            map.values().forEach(inner -> texts(Objects.requireNonNull(inner), texts));
        } else if (value instanceof List<?> list) {
            list.forEach(inner -> texts(Objects.requireNonNull(inner), texts));
        } else if (value instanceof String text) {
            texts.add(text);
        }
    }
}
