package dev.sunthread.genealogy;

import dev.sunthread.genealogy.Change.Charge;
import dev.sunthread.genealogy.Change.Discharge;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The edges that follow from things said, read without a database. */
final class EdgesByHand {

    private static final Map<String, Long> ITEMS = Map.of("ADH", 1L, "PRI", 2L, "CELL", 3L);

    private final FactsByHand facts;
    private final Map<String, TraceRef> nodes;
    private final long leastExact;

    /** {@code leastExact} is the uncertainty of the worst clock known, in microseconds. */
    EdgesByHand(FactsByHand facts, Map<String, TraceRef> nodes, long leastExact) {
        this.facts = facts;
        this.nodes = nodes;
        this.leastExact = leastExact;
    }

    List<Edge> all() {
        List<Installation> installations =
                facts.of("installation").map(this::installation).toList();
        List<Removal> removals = facts.of("removal").map(this::removal).toList();
        return Stream.concat(
                        facts.of("step").flatMap(this::uses), InstallationEdges.of(installations, removals).stream())
                .toList();
    }

    /** The early end of the earliest birth of a unit, since ever for one whose birth isn't recorded. */
    long start(String serial) {
        return facts.of("birth")
                .filter(birth -> birth.serials("units").contains(serial))
                .mapToLong(birth ->
                        told(birth.textOrNull("station"), birth.instant()).early())
                .min()
                .orElse(Long.MIN_VALUE);
    }

    TraceRef node(@Nullable Object name) {
        return Objects.requireNonNull(nodes.get(name), String.valueOf(name));
    }

    private Stream<Edge> uses(Said step) {
        Moment moment = momentOf(step);
        return step.maps("uses").stream()
                .flatMap(use -> candidates(step.text("station"), use, moment).stream())
                .flatMap(candidate -> step.serials("units").stream()
                        .map(unit -> Edge.atOnce(
                                candidate.lot(), node(unit), candidate.certainty(), moment, candidate.reason())));
    }

    private List<Candidate> candidates(String station, Map<String, Object> use, Moment moment) {
        long item = Objects.requireNonNull(ITEMS.get(use.get("item")));
        TraceRef scanned = use.containsKey("lot") ? node(use.get("lot")) : null;
        Use asked = new Use(moment, item, scanned);
        Object position = use.get("position");
        if (position != null) {
            return timeline(station, (String) position).candidates(asked);
        }
        return new UseSources(List.of(timeline(station, "V1"), timeline(station, "V2"))).candidates(asked);
    }

    private PositionTimeline timeline(String station, String position) {
        List<Charge> charges = at(station, position, "charge")
                .map(on -> new Charge(node(on.text("lot")), itemOf(on.text("lot")), told(on), facts.entry(on)))
                .toList();
        List<Discharge> discharges = at(station, position, "discharge")
                .map(off -> new Discharge(
                        off.textOrNull("lot") == null ? null : node(off.text("lot")), told(off), facts.entry(off)))
                .toList();
        List<Moment> cleanPoints =
                at(station, position, "clean-point").map(this::told).toList();
        List<Moment> uses = new ArrayList<>();
        facts.of("step")
                .filter(step -> step.text("station").equals(station))
                .forEach(step -> step.maps("uses").stream()
                        .filter(use -> position.equals(use.get("position")))
                        .forEach(use -> uses.add(momentOf(step))));
        return PositionTimeline.of(position, charges, discharges, cleanPoints, uses);
    }

    private Stream<Said> at(String station, String position, String kind) {
        return facts.of(kind)
                .filter(one -> one.text("station").equals(station)
                        && one.text("position").equals(position));
    }

    private @Nullable Long itemOf(String lot) {
        Set<String> items = facts.of("receipt")
                .filter(receipt -> receipt.text("lot").equals(lot))
                .map(receipt -> receipt.text("item"))
                .collect(Collectors.toSet());
        return items.size() == 1 ? ITEMS.get(items.iterator().next()) : null;
    }

    private Moment momentOf(Said step) {
        long start = Said.micros(Objects.requireNonNull(step.momentOrNull("startedAt")));
        String station = step.text("station");
        return new Moment(
                told(station, start).early(), told(station, step.instant()).late());
    }

    private Installation installation(Said put) {
        return new Installation(facts.entry(put), child(put), parent(put), put.textOrNull("position"), told(put));
    }

    private Removal removal(Said taken) {
        return new Removal(facts.entry(taken), child(taken), parent(taken), taken.textOrNull("position"), told(taken));
    }

    private TraceRef child(Said said) {
        Map<String, Object> child = said.map("child");
        return child.containsKey("lot")
                ? node(child.get("lot"))
                : node(Said.map(child, "unit").get("serial"));
    }

    private TraceRef parent(Said said) {
        return node(said.map("parent").get("serial"));
    }

    private Moment told(Said said) {
        return told(said.textOrNull("station"), said.instant());
    }

    private Moment told(@Nullable String station, long instant) {
        return Moment.within(instant, station == null ? leastExact : facts.uncertainty(station, instant));
    }
}
