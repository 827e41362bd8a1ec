package dev.sunthread.genealogy.reach;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.records.Installation;
import dev.sunthread.genealogy.records.PlacementFacts;
import dev.sunthread.genealogy.records.Removal;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.genealogy.walk.Reason;
import dev.sunthread.kernel.TraceKind;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Stays with what kept lines tell of them. What a line put somewhere may be there; what it took out may have left then;
 * and a recorded stay that it speaks against is certain only until then.
 */
final class DoubtedStays {

    private final PlacementFacts recorded;
    private final PlacementFacts kept;
    private final Set<Long> takenBack;
    private final Function<PlacementFacts, List<Edge>> stays;

    private DoubtedStays(
            PlacementFacts recorded,
            PlacementFacts kept,
            Set<Long> takenBack,
            Function<PlacementFacts, List<Edge>> stays) {
        this.takenBack = takenBack;
        this.recorded = recorded;
        this.kept = kept;
        this.stays = stays;
    }

    /** The stays by these facts, some of which are kept, or may be taken back, by lines. */
    static List<Edge> of(
            PlacementFacts told, PlacementFacts kept, Set<Long> takenBack, Function<PlacementFacts, List<Edge>> stays) {
        boolean doubted = Stream.concat(
                        told.installations().stream().map(Installation::entry),
                        told.removals().stream().map(Removal::entry))
                .anyMatch(takenBack::contains);
        if (!doubted && kept.isNone()) {
            return stays.apply(told);
        }
        return new DoubtedStays(told.without(takenBack), kept.and(told.among(takenBack)), takenBack, stays).edges();
    }

    private List<Edge> edges() {
        Set<Long> entries = new HashSet<>();
        kept.installations().forEach(one -> entries.add(one.entry()));
        kept.removals().forEach(one -> entries.add(one.entry()));
        List<Edge> may = stays.apply(recorded.and(new PlacementFacts(kept.installations(), List.of()))).stream()
                .filter(edge -> entries.contains(edge.reason().entry()))
                .map(this::byLine)
                .toList();
        Stream<Edge> left = stays.apply(recorded.and(new PlacementFacts(List.of(), kept.removals()))).stream()
                .filter(edge -> entries.contains(edge.reason().entry()))
                .filter(edge -> !edge.from().equals(edge.to()))
                .map(this::byLine);
        Stream<Edge> sure = stays.apply(recorded).stream().map(edge -> doubted(edge, may));
        return Stream.of(may.stream(), left, sure)
                .flatMap(some -> some)
                .distinct()
                .toList();
    }

    private Edge byLine(Edge stay) {
        Reason told = stay.reason();
        Reason reason = takenBack.contains(told.entry()) ? told : new Reason("kept-line", told.named(), told.entry());
        return new Edge(
                        stay.from(),
                        stay.to(),
                        stay.certainty(),
                        stay.begin(),
                        stay.lastCrossing(),
                        stay.stayEnd(),
                        reason)
                .atMost(Certainty.POSSIBLE);
    }

    private Edge doubted(Edge stay, List<Edge> may) {
        Edge doubted = stay;
        for (Edge other : may) {
            if (speaksAgainst(other, stay)
                    && other.begin().early() < stay.stayEnd().late()) {
                doubted = stay.begin().late() < other.stayEnd().late() ? endedAt(doubted, other.begin()) : doubted;
            }
        }
        for (Removal removal : kept.removals()) {
            if (ends(removal, stay)) {
                doubted = endedAt(doubted, removal.at());
            }
        }
        return doubted;
    }

    // told of a carrier itself, everything was taken off it; of a unit itself, it was taken out of whatever it was in
    private static boolean ends(Removal removal, Edge stay) {
        boolean ofItself = removal.child().equals(removal.parent());
        return ofItself && removal.child().kind() == TraceKind.UNIT
                ? removal.child().equals(stay.from())
                : (ofItself || removal.child().equals(stay.from()))
                        && removal.parent().equals(stay.to());
    }

    private static boolean speaksAgainst(Edge other, Edge stay) {
        boolean isElsewhere = other.from().equals(stay.from())
                && stay.from().kind() != TraceKind.LOT
                && !(other.to().equals(stay.to()) && samePlace(other, stay));
        boolean isInItsPlace = other.to().equals(stay.to())
                && !other.from().equals(stay.from())
                && place(other) != null
                && samePlace(other, stay);
        return isElsewhere || isInItsPlace;
    }

    private static boolean samePlace(Edge one, Edge other) {
        return place(one) == null || place(other) == null || Objects.equals(place(one), place(other));
    }

    private static @org.jspecify.annotations.Nullable String place(Edge edge) {
        return edge.reason().named().get("position");
    }

    private static Edge endedAt(Edge stay, Moment at) {
        if (at.late() < stay.begin().early() || at.early() >= stay.stayEnd().early()) {
            return stay;
        }
        if (at.early() <= stay.begin().late()) {
            return stay.atMost(Certainty.POSSIBLE);
        }
        Moment last = stay.lastCrossing();
        return new Edge(
                stay.from(),
                stay.to(),
                stay.certainty(),
                stay.begin(),
                stay.from().kind() == TraceKind.UNIT
                        ? new Moment(Math.min(last.early(), at.early() - 1), last.late())
                        : last,
                new Moment(at.early(), stay.stayEnd().late()),
                stay.reason());
    }
}
