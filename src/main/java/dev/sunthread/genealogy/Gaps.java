package dev.sunthread.genealogy;

import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The gaps that are known so far, one for each set of candidates. Asked from a candidate, everything in the plant that
 * demands its item or run is looked at; asked from a unit, what it and its companions lack.
 */
final class Gaps {

    private final Records records;
    private final Lacks lacks;
    private final Candidates candidates;
    private final Set<Lack> placed = new HashSet<>();
    private final Map<Long, Gap> known = new HashMap<>();
    private final Map<TraceRef, Set<Gap>> byCandidate = new HashMap<>();
    private final Map<TraceRef, Set<Gap>> byParent = new HashMap<>();
    private final Set<Long> items = new HashSet<>();
    private final Set<RunDemand> runs = new HashSet<>();

    Gaps(Records records, Lacks lacks, Candidates candidates) {
        this.records = records;
        this.lacks = lacks;
        this.candidates = candidates;
    }

    /** Makes known the gaps of what these units lack, and of what uses in these happenings do. */
    Set<Gap> of(Collection<TraceRef> units, Collection<Happening> happenings) {
        List<Lack> lacking = Stream.concat(lacks.of(units).stream(), lacks.inUsesOf(happenings).stream())
                .toList();
        place(lacking);
        Set<Lack> asked = new HashSet<>(lacking);
        return known.values().stream()
                .filter(gap -> gap.lacks().stream().anyMatch(asked::contains))
                .collect(Collectors.toSet());
    }

    Set<Gap> ofBlends(Collection<Long> lots) {
        List<Lack> lacking =
                lots.isEmpty() ? List.of() : lacks.ofBlends(records.lots().blends(lots));
        place(lacking);
        return known.values().stream()
                .filter(gap -> gap.lacks().stream().anyMatch(lacking::contains))
                .collect(Collectors.toSet());
    }

    /** The gaps of children that these parents lack; all their lacks are made known. */
    Map<TraceRef, Set<Gap>> insideOf(Collection<TraceRef> parents) {
        place(lacks.of(parents));
        Map<TraceRef, Set<Gap>> inside = new HashMap<>();
        parents.stream().filter(byParent::containsKey).forEach(parent -> inside.put(parent, byParent.get(parent)));
        return inside;
    }

    /** The gaps that a candidate of these items or under these definitions may fill. */
    Set<Gap> ofCandidate(TraceRef candidate) {
        return byCandidate.getOrDefault(candidate, Set.of());
    }

    /** The gap with this node, and with everything in the plant that lacks one of its candidates. */
    Stream<Gap> whole(Collection<TraceRef> nodes) {
        List<Gap> gaps = nodes.stream()
                .filter(node -> Gap.KINDS.contains(node.kind()))
                .filter(node -> known.containsKey(node.id()))
                .map(node -> known.get(node.id()))
                .toList();
        learnItems(gaps.stream().flatMap(gap -> gap.items().stream()).toList());
        learnRuns(gaps.stream().flatMap(gap -> gap.runs().stream()).toList());
        return gaps.stream();
    }

    /** Makes known every gap that one of these items may fill. */
    void learnItems(Collection<Long> wanted) {
        Set<Long> missing = new HashSet<>(wanted);
        missing.removeAll(items);
        if (missing.isEmpty()) {
            return;
        }
        items.addAll(missing);
        List<Lack> lacking = new ArrayList<>(lacks.of(mayLack(records.demands().demanding(missing))));
        lacking.addAll(lacks.inUsesOfItems(missing));
        lacking.addAll(lacks.ofBlends(records.lots().blendsDemanding(missing)));
        place(lacking);
    }

    /** Makes known every gap of any item. */
    void learnEveryItem() {
        Set<Long> all = new HashSet<>(records.demands().demandedItems());
        all.addAll(records.uses().itemsUnscanned());
        learnItems(all);
    }

    void learnRuns(Collection<RunDemand> wanted) {
        Set<RunDemand> missing = new HashSet<>(wanted);
        missing.removeAll(runs);
        if (!missing.isEmpty()) {
            runs.addAll(missing);
            place(lacks.of(mayLack(records.demands().demandingRuns(missing))));
        }
    }

    private List<TraceRef> mayLack(Collection<Long> demanding) {
        return demanding.isEmpty()
                ? List.of()
                : records.signs().thatMayLackSomething(demanding).stream()
                        .map(TraceRef::unit)
                        .toList();
    }

    private void place(List<Lack> lacking) {
        List<Lack> fresh = lacking.stream().filter(placed::add).toList();
        List<List<Gap.Candidate>> found = candidates.of(fresh);
        for (int i = 0; i < fresh.size(); i++) {
            if (!found.get(i).isEmpty()) {
                place(fresh.get(i), new Gap(fresh.get(i), found.get(i)));
            }
        }
    }

    private void place(Lack lack, Gap made) {
        Gap gap = known.computeIfAbsent(made.node().id(), any -> made);
        gap.lacks().add(lack);
        gap.candidates()
                .forEach(candidate -> byCandidate
                        .computeIfAbsent(candidate.node(), any -> new HashSet<>())
                        .add(gap));
        if (lack.isOfChild()) {
            byParent.computeIfAbsent(lack.parent(), any -> new HashSet<>()).add(gap);
        }
    }
}
