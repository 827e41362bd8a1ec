package dev.sunthread.genealogy.reach;

import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.records.RecordedUse;
import dev.sunthread.genealogy.records.Records;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Happenings and what they took in, each read once. */
public final class Readings {

    private final Records records;
    private final Containment containment;
    private final Map<TraceRef, List<Happening>> happenings = new HashMap<>();
    private final Map<TraceRef, List<Happening>> naming = new HashMap<>();
    private final Map<TraceRef, List<RecordedUse>> uses = new HashMap<>();

    public Readings(Records records, Containment containment) {
        this.records = records;
        this.containment = containment;
    }

    /** Every happening that may have reached one of these units, and some more. */
    public Set<Happening> thatMayReach(Collection<TraceRef> units) {
        Set<TraceRef> named = containment.companions(units);
        named.addAll(containment.carriersOf(List.copyOf(named)));
        return naming(named);
    }

    /** Every happening that names one of these units or carriers. */
    public Set<Happening> naming(Collection<TraceRef> nodes) {
        learnNaming(Set.copyOf(nodes));
        Set<Happening> those = new LinkedHashSet<>();
        nodes.forEach(node -> those.addAll(naming.getOrDefault(node, List.of())));
        return those;
    }

    private void learnNaming(Set<TraceRef> nodes) {
        Set<TraceRef> missing = new HashSet<>(nodes);
        missing.removeAll(naming.keySet());
        if (missing.isEmpty()) {
            return;
        }
        missing.forEach(node -> naming.put(node, new ArrayList<>()));
        for (Happening happening : records.happenings().naming(missing)) {
            keepStep(happening);
            happening.units().stream()
                    .filter(missing::contains)
                    .forEach(unit -> naming.getOrDefault(unit, List.of()).add(happening));
            happening.carriers().stream()
                    .filter(missing::contains)
                    .forEach(carrier -> naming.getOrDefault(carrier, List.of()).add(happening));
        }
    }

    /** The happenings with these nodes, those that are known. */
    public List<Happening> of(Collection<TraceRef> nodes) {
        List<TraceRef> missing = nodes.stream()
                .filter(node -> !happenings.containsKey(node))
                .distinct()
                .toList();
        if (!missing.isEmpty()) {
            Set<TraceRef> asked = new HashSet<>(missing);
            missing.forEach(node -> happenings.put(node, new ArrayList<>()));
            records.happenings().of(missing).stream()
                    .filter(one -> asked.contains(one.node()))
                    .forEach(one ->
                            happenings.getOrDefault(one.node(), List.of()).add(one));
        }
        return nodes.stream()
                .distinct()
                .flatMap(node -> happenings.getOrDefault(node, List.of()).stream())
                .toList();
    }

    /** The steps of these uses, by their nodes; unloadings have none. */
    public Map<TraceRef, Happening> stepsOf(Collection<RecordedUse> uses) {
        return of(uses.stream()
                        .filter(use -> use.into() == null)
                        .map(RecordedUse::step)
                        .toList())
                .stream()
                .collect(Collectors.toMap(Happening::node, Function.identity()));
    }

    // a run may be recorded by several entries, of which this may be one; a step is its entry
    private void keepStep(Happening happening) {
        if (happening.node().kind() == TraceKind.STATION_STEP) {
            happenings.put(happening.node(), List.of(happening));
        }
    }

    /** What these happenings took in. */
    public List<RecordedUse> usesIn(Collection<Happening> happenings) {
        List<TraceRef> steps = happenings.stream()
                .map(Happening::node)
                .filter(node -> node.kind() == TraceKind.STATION_STEP)
                .toList();
        List<TraceRef> missing =
                steps.stream().filter(step -> !uses.containsKey(step)).toList();
        if (!missing.isEmpty()) {
            missing.forEach(step -> uses.put(step, new ArrayList<>()));
            records.uses()
                    .in(missing)
                    .forEach(use ->
                            uses.getOrDefault(use.step(), new ArrayList<>()).add(use));
        }
        return steps.stream()
                .flatMap(step -> uses.getOrDefault(step, List.of()).stream())
                .toList();
    }
}
