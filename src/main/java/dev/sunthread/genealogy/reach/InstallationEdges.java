package dev.sunthread.genealogy.reach;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.records.Installation;
import dev.sunthread.genealogy.records.Removal;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Edges from installations and removals, the same for any order in which the facts arrive. An installation ends at the
 * earliest removal from its place that isn't before it, whether or not it was recorded again meanwhile; where clocks
 * or ties leave open which removal that is, the end is uncertain and the later one counts for what is possible.
 *
 * <p>A removal with no installation to end proves a possible stay since the removal before it, or since ever. Stays
 * that contradict each other keep their recorded length and are at most possible; so does the earlier one of a unit
 * that was put into its place again more than two seconds later, for it may have been out meanwhile. Takes time
 * quadratic in the facts of one child in one parent, and in the stays of one unit or one position.
 */
final class InstallationEdges {

    private record Pair(TraceRef child, TraceRef parent) {}

    private record Place(TraceRef parent, String position) {}

    private final Map<Pair, List<Installation>> installations;
    private final Map<Pair, List<Removal>> removals;

    private InstallationEdges(Collection<Installation> installations, Collection<Removal> removals) {
        this.installations = grouped(installations, fact -> new Pair(fact.child(), fact.parent()));
        this.removals = grouped(removals, fact -> new Pair(fact.child(), fact.parent()));
    }

    /** The edges in a fixed order; facts must be all there are of the children and parents they name. */
    static List<Edge> of(Collection<Installation> installations, Collection<Removal> removals) {
        InstallationEdges edges = new InstallationEdges(installations, removals);
        List<Stay> stays = Stream.concat(
                        installations.stream().map(installed -> Stay.of(installed, edges.end(installed))),
                        removals.stream().filter(edges::endsNothing).map(edges::unrecorded))
                .toList();
        return withoutFalseCertainty(stays).sorted(Edge.ORDER).toList();
    }

    private Moment end(Installation installed) {
        long early = Long.MAX_VALUE;
        long late = Long.MAX_VALUE;
        for (Removal removal : removalsFrom(installed)) {
            if (!removal.at().surelyBefore(installed.at())) {
                early = Math.min(early, removal.at().early());
            }
            // at one microsecond it may have ended an earlier stay, recorded or not, which this one followed
            if (installed.at().surelyBefore(removal.at())) {
                late = Math.min(late, removal.at().late());
            }
        }
        return new Moment(early, late);
    }

    private boolean endsNothing(Removal removal) {
        return installations.getOrDefault(new Pair(removal.child(), removal.parent()), List.of()).stream()
                .noneMatch(installed -> surelyIsTheEndOf(installed, removal));
    }

    private boolean surelyIsTheEndOf(Installation installed, Removal removal) {
        return removal.isOf(installed)
                && installed.at().surelyBefore(removal.at())
                && removalsFrom(installed).stream().noneMatch(other -> mayLieBetween(installed, other, removal));
    }

    private static boolean mayLieBetween(Installation installed, Removal other, Removal removal) {
        return other.entry() != removal.entry()
                && !other.at().surelyBefore(installed.at())
                && !removal.at().surelyBefore(other.at());
    }

    private Stay unrecorded(Removal removal) {
        Moment earliest = removals.getOrDefault(new Pair(removal.child(), removal.parent()), List.of()).stream()
                .filter(other -> other.isOfSamePlaceAs(removal) && other.at().surelyBefore(removal.at()))
                .map(Removal::at)
                .reduce(Moment.SINCE_EVER, Moment::orLater);
        return Stay.before(removal, earliest);
    }

    private List<Removal> removalsFrom(Installation installed) {
        return removals.getOrDefault(new Pair(installed.child(), installed.parent()), List.of()).stream()
                .filter(removal -> removal.isOf(installed))
                .toList();
    }

    private static Stream<Edge> withoutFalseCertainty(List<Stay> stays) {
        Map<Object, List<Stay>> rivals = new HashMap<>();
        for (Stay stay : stays) {
            places(stay)
                    .forEach(place -> rivals.computeIfAbsent(place, any -> new ArrayList<>())
                            .add(stay));
        }
        return stays.stream().map(stay -> {
            boolean contradicted = places(stay).stream()
                    .flatMap(place -> rivals.getOrDefault(place, List.of()).stream())
                    .anyMatch(stay::isContradictedBy);
            return contradicted ? stay.edge().atMost(Certainty.POSSIBLE) : stay.edge();
        });
    }

    private static List<Object> places(Stay stay) {
        List<Object> places = new ArrayList<>();
        if (stay.position() != null) {
            places.add(new Place(stay.parent(), stay.position()));
        }
        if (stay.isBody()) {
            places.add(stay.child());
        }
        return places;
    }

    private static <F> Map<Pair, List<F>> grouped(Collection<F> facts, Function<F, Pair> by) {
        return facts.stream().collect(Collectors.groupingBy(by));
    }
}
