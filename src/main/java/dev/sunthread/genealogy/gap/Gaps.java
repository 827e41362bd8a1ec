package dev.sunthread.genealogy.gap;

import dev.sunthread.genealogy.demand.RunDemand;
import dev.sunthread.genealogy.demand.UnitDemand;
import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.records.Making;
import dev.sunthread.genealogy.records.Records;
import dev.sunthread.genealogy.records.Unfilled;
import dev.sunthread.genealogy.records.Unmade;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The gaps that are known so far, one for each set of candidates. Asked from a candidate, everything in the plant that
 * demands its item or run is looked at; asked from a unit, what it and its companions lack.
 */
public final class Gaps {

    private final Records records;
    private final Lacks lacks;
    private final Definitions definitions;
    private final Candidates candidates;
    private final Childless childless;
    private final Set<Lack> placed = new HashSet<>();
    private final Map<Long, Gap> known = new HashMap<>();
    private final Map<Lack, Gap> byLack = new HashMap<>();
    private final Map<TraceRef, Set<Gap>> byCandidate = new HashMap<>();
    private final Map<TraceRef, Set<Gap>> byParent = new HashMap<>();
    private final Set<Long> items = new HashSet<>();
    private final Set<RunDemand> runs = new HashSet<>();
    private @Nullable List<Lack> ofNoOrigin;
    private @Nullable List<Lack> ofNoOriginOrLot;

    public Gaps(Records records, Definitions definitions, Lacks lacks, Candidates candidates, Childless childless) {
        this.records = records;
        this.definitions = definitions;
        this.lacks = lacks;
        this.candidates = candidates;
        this.childless = childless;
    }

    /** Makes known the gaps of what these units lack, and of what uses in these happenings and in kept lines do. */
    public Set<Gap> of(Collection<TraceRef> units, Collection<Happening> happenings) {
        return placed(
                Stream.of(lacks.of(units).stream(), lacks.inUsesOf(happenings).stream(), lacks.inKeptLines().stream())
                        .flatMap(Function.identity()));
    }

    /** The gaps of what these lots and containers lack: components, or any record of where they came from. */
    public Set<Gap> ofMade(Collection<TraceRef> made) {
        if (made.isEmpty()) {
            return Set.of();
        }
        List<Long> lots = made.stream()
                .filter(node -> node.kind() == TraceKind.LOT)
                .map(TraceRef::id)
                .toList();
        return placed(Stream.of(
                        lacks.ofBlends(records.lots().blends(lots)).stream(),
                        lacks.ofUnloadings(lots).stream(),
                        Stream.concat(ofNoOrigin().stream(), lacks.inKeptLines().stream())
                                .filter(lack -> made.contains(lack.made())))
                .flatMap(Function.identity()));
    }

    /** The gaps of children that these parents lack; all lacks of those that may lack one are made known. */
    public Map<TraceRef, Set<Gap>> insideOf(Collection<TraceRef> parents) {
        place(lacks.of(childless.among(parents)));
        Map<TraceRef, Set<Gap>> inside = new HashMap<>();
        parents.stream().filter(byParent::containsKey).forEach(parent -> inside.put(parent, byParent.get(parent)));
        return inside;
    }

    /** The gaps that a candidate of these items or under these definitions may fill. */
    public Set<Gap> ofCandidate(TraceRef candidate) {
        return byCandidate.getOrDefault(candidate, Set.of());
    }

    /** The gap with this node, and with everything in the plant that lacks one of its candidates. */
    public Stream<Gap> whole(Collection<TraceRef> nodes) {
        List<Gap> gaps = nodes.stream()
                .filter(node -> node.kind() == TraceKind.GAP)
                .filter(node -> known.containsKey(node.id()))
                .map(node -> known.get(node.id()))
                .toList();
        learnItems(gaps.stream().flatMap(gap -> gap.items().stream()).toList());
        learnRuns(gaps.stream().flatMap(gap -> gap.runs().stream()).toList());
        return gaps.stream();
    }

    /** Makes known every gap that one of these items may fill. */
    public void learnItems(Collection<Long> wanted) {
        Set<Long> missing = new HashSet<>(wanted);
        missing.removeAll(items);
        if (!missing.isEmpty()) {
            learnAll(withMixedOf(missing));
        }
    }

    // what is mixed of an item by a formula may stand for it where the mix is not recorded
    private Set<Long> withMixedOf(Set<Long> missing) {
        Set<Long> all = new HashSet<>(missing);
        all.addAll(records.demands().allMixedOf(missing));
        return all;
    }

    private void learnAll(Set<Long> missing) {
        missing.removeAll(items);
        items.addAll(missing);
        List<Lack> lacking = new ArrayList<>(
                lacks.of(mayLack(demands(records.demands().demanding(missing)).flatMap(item -> item.of(missing)))));
        lacking.addAll(lacks.inUsesOfItems(missing));
        lacking.addAll(lacks.ofBlends(records.lots().blendsDemanding(missing)));
        Stream.concat(ofNoOrigin().stream(), lacks.inKeptLines().stream())
                .filter(lack -> !Collections.disjoint(lack.items(), missing))
                .forEach(lacking::add);
        place(lacking);
    }

    /** Makes known every gap of any item. */
    public void learnEveryItem() {
        Set<Long> all = new HashSet<>(records.demands().demandedItems());
        all.addAll(records.uses().itemsUnscanned());
        ofNoOrigin().forEach(lack -> all.addAll(lack.items()));
        lacks.inKeptLines().forEach(lack -> all.addAll(lack.items()));
        learnItems(all);
    }

    /** Of what is of no recorded origin, all but containers that a record names with a lot: it is material of that. */
    List<Lack> ofNoOriginOrLot() {
        if (ofNoOriginOrLot == null) {
            List<Lack> all = ofNoOrigin();
            Set<TraceRef> named = all.isEmpty()
                    ? Set.of()
                    : records.lots().labelled().stream().map(Making::to).collect(Collectors.toSet());
            ofNoOriginOrLot =
                    all.stream().filter(lack -> !named.contains(lack.ofMade())).toList();
        }
        return ofNoOriginOrLot;
    }

    // these are few, so that all of them are looked at together
    private List<Lack> ofNoOrigin() {
        if (ofNoOrigin == null) {
            List<Unmade> lots = records.lots().unmade();
            List<Unfilled> containers = records.lots().unfilled();
            ofNoOrigin = lots.isEmpty() && containers.isEmpty() ? List.of() : ofNoOrigin(lots, containers);
        }
        return ofNoOrigin;
    }

    private List<Lack> ofNoOrigin(List<Unmade> lots, List<Unfilled> containers) {
        Sources sources = new Sources(records);
        return Stream.concat(
                        lots.stream().map(lot -> Lacks.ofUnmade(lot, sources.withRegraded(lot.items()))),
                        containers.stream()
                                .map(one -> Lacks.ofUnfilled(
                                        one, one.items().isEmpty() ? sources.of(one.items()) : one.items())))
                .toList();
    }

    public void learnRuns(Collection<RunDemand> wanted) {
        Set<RunDemand> missing = new HashSet<>(wanted);
        missing.removeAll(runs);
        if (!missing.isEmpty()) {
            runs.addAll(missing);
            place(lacks.of(
                    mayLack(demands(records.demands().demandingRuns(missing)).flatMap(item -> item.ofRuns(missing)))));
        }
    }

    /** A run, and those that may have been done on what was on a carrier with it. */
    Stream<Happening> withThoseAlong(Happening run) {
        return Stream.concat(Stream.of(run), candidates.alongWith(run));
    }

    private Stream<UnitDemands> demands(Collection<Long> demanding) {
        definitions.learn(demanding);
        return demanding.stream()
                .map(item -> new UnitDemands(item, definitions.routes(item), definitions.structures(item)));
    }

    private List<TraceRef> mayLack(Stream<UnitDemand> demands) {
        return records.signs().thatMayLack(demands.distinct().toList()).stream()
                .map(TraceRef::unit)
                .toList();
    }

    /** Makes the gaps of these lacks known, and gives them. */
    private Set<Gap> placed(Stream<Lack> lacking) {
        List<Lack> asked = lacking.toList();
        place(asked);
        return asked.stream().map(byLack::get).filter(Objects::nonNull).collect(Collectors.toSet());
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
        gap.add(lack);
        byLack.put(lack, gap);
        gap.candidates()
                .forEach(candidate -> byCandidate
                        .computeIfAbsent(candidate.node(), any -> new HashSet<>())
                        .add(gap));
        if (lack.isOfChild()) {
            byParent.computeIfAbsent(lack.parent(), any -> new HashSet<>()).add(gap);
        }
    }
}
