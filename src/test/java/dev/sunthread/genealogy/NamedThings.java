package dev.sunthread.genealogy;

import dev.sunthread.kernel.TraceRef;
import dev.sunthread.simulator.world.Thing;
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
            "into", Thing.Kind.LOT,
            "container", Thing.Kind.CONTAINER,
            "label", Thing.Kind.CONTAINER,
            "serial", Thing.Kind.UNIT);

    private final String plant;
    private final Set<Thing> things = new TreeSet<>();

    NamedThings(String plant, List<Said> said) {
        this.plant = plant;
        FIELDS.forEach((field, kind) -> named(said, field).forEach(name -> add(kind, name)));
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

    private void add(Thing.Kind kind, String told) {
        things.add(new Thing(kind, told.substring(plant.length() + 1)));
    }

    /** Every name that stands in a field of this name in anything but a kept line, whatever became of it. */
    static Set<String> named(List<Said> said, String field) {
        Set<String> names = new TreeSet<>();
        said.stream()
                .filter(one -> !one.kind().equals("kept-line"))
                .forEach(one -> collect(field, "", one.body(), names));
        return names;
    }

    private static void collect(String wanted, String field, Object value, Set<String> names) {
        if (value instanceof Map<?, ?> map) {
            map.forEach((key, inner) -> collect(wanted, String.valueOf(key), Objects.requireNonNull(inner), names));
        } else if (value instanceof List<?> list) {
            list.forEach(inner -> collect(wanted, field, Objects.requireNonNull(inner), names));
        } else if (value instanceof String name && field.equals(wanted)) {
            names.add(name);
        }
    }
}
