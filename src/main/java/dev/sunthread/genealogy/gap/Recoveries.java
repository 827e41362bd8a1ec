package dev.sunthread.genealogy.gap;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.records.SignRecords;
import dev.sunthread.genealogy.records.UnitSigns;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.genealogy.walk.Reason;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Edges from units to the lots and containers of which no record tells where they came from: material of any unit that
 * was there before the first sign of one may have been recovered into it. All go through one node, so that there are no
 * more of them than units and such lots; the order of times keeps out what came later.
 */
final class Recoveries {

    private static final TraceRef NODE = new TraceRef(TraceKind.RECOVERY_GAP, 0);

    private final Gaps gaps;
    private final Signs signs;
    private final SignRecords records;
    private @Nullable List<UnitSigns> there;

    Recoveries(Gaps gaps, Signs signs, SignRecords records) {
        this.gaps = gaps;
        this.signs = signs;
        this.records = records;
    }

    /** Edges from those of these units that were there before such a lot. */
    Stream<Edge> outOfUnits(Collection<TraceRef> nodes) {
        // a name that stands in kept lines alone has a number below nought, and fills no gap
        List<TraceRef> units = nodes.stream()
                .filter(node -> node.kind() == TraceKind.UNIT && node.id() > 0)
                .toList();
        if (units.isEmpty() || gaps.ofNoOriginOrLot().isEmpty()) {
            return Stream.empty();
        }
        signs.learn(units);
        long last = lastFirstSign();
        return units.stream()
                .map(signs::of)
                .filter(unit -> unit.first() <= last)
                .map(Recoveries::recovered);
    }

    /** Edges into the node from every unit, if it is asked for. */
    Stream<Edge> intoNodes(Collection<TraceRef> nodes) {
        return nodes.contains(NODE) ? there().stream().map(Recoveries::recovered) : Stream.empty();
    }

    /** Edges out of the node to every such lot and container, if it is asked for. */
    Stream<Edge> outOfNodes(Collection<TraceRef> nodes) {
        return nodes.contains(NODE) ? gaps.ofNoOriginOrLot().stream().map(Recoveries::into) : Stream.empty();
    }

    /** Edges into those of these lots and containers that are such, if any unit was there before. */
    Stream<Edge> intoMade(Collection<TraceRef> made) {
        List<Lack> lacking = made.isEmpty()
                ? List.of()
                : gaps.ofNoOriginOrLot().stream()
                        .filter(lack -> made.contains(lack.made()))
                        .toList();
        return lacking.isEmpty() || there().isEmpty()
                ? Stream.empty()
                : lacking.stream().map(Recoveries::into);
    }

    private List<UnitSigns> there() {
        if (there == null) {
            there = records.thereBy(lastFirstSign());
        }
        return there;
    }

    private long lastFirstSign() {
        return gaps.ofNoOriginOrLot().stream()
                .mapToLong(lack -> lack.window().late())
                .max()
                .orElse(Long.MIN_VALUE);
    }

    private static Edge recovered(UnitSigns unit) {
        Moment first = Moment.at(unit.first());
        Reason reason = Reason.of("may-be-recovered", 0);
        return Edge.during(unit.node(), NODE, Certainty.UNPROVEN, first, Moment.NEVER, reason);
    }

    private static Edge into(Lack lack) {
        Moment begin = Moment.at(lack.window().early());
        Moment end = Moment.at(lack.window().late());
        Reason reason = Reason.of("may-be-of-a-unit", 0);
        return Edge.during(NODE, lack.ofMade(), Certainty.UNPROVEN, begin, end, reason);
    }
}
