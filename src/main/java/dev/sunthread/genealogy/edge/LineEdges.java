package dev.sunthread.genealogy.edge;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.line.LineWays;
import dev.sunthread.genealogy.position.PositionTimeline;
import dev.sunthread.genealogy.position.Use;
import dev.sunthread.genealogy.reach.Acting;
import dev.sunthread.genealogy.reach.Contents;
import dev.sunthread.genealogy.reach.Reach;
import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.records.OpenLine;
import dev.sunthread.genealogy.records.OpenLine.Part;
import dev.sunthread.genealogy.records.OpenLine.Spot;
import dev.sunthread.genealogy.records.Records;
import dev.sunthread.genealogy.records.StationPosition;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.Reason;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Edges through kept lines that no person has settled: what a line names may have gone into what else it names, in the
 * ways that its kind can carry matter. A run that only a line names is the line itself.
 */
final class LineEdges {

    private final Records records;
    private final Reach reach;
    private final Contents contents;
    private @Nullable List<Acting> all;

    LineEdges(Records records, Reach reach, Contents contents) {
        this.records = records;
        this.reach = reach;
        this.contents = contents;
    }

    Stream<Acting> outOf(Collection<TraceRef> nodes) {
        Set<TraceRef> asked = new HashSet<>(nodes);
        return all().stream().filter(one -> asked.contains(one.edge().from()));
    }

    Stream<Acting> into(Collection<TraceRef> nodes) {
        Set<TraceRef> asked = new HashSet<>(nodes);
        return all().stream().filter(one -> asked.contains(one.edge().to()));
    }

    private List<Acting> all() {
        if (all == null) {
            List<OpenLine> lines = records.lines().open();
            reach.learn(lines.stream().map(LineWays::acting).toList());
            all = lines.stream().flatMap(this::edges).toList();
        }
        return all;
    }

    private Stream<Acting> edges(OpenLine line) {
        Happening acting = LineWays.acting(line);
        Set<TraceRef> targets = targets(line, acting);
        Reason reason = Reason.of("kept-line", line.entry());
        if (line.at().early() != Long.MIN_VALUE) {
            reason = reason.with("at", line.end());
        }
        Reason why = reason;
        return sources(line).stream()
                .flatMap(source -> targets.stream()
                        .filter(target -> !target.equals(source))
                        .map(target -> edge(source, target, line, why))
                        .map(edge ->
                                edge.to().kind() == TraceKind.UNIT ? reach.acting(acting, edge) : Acting.only(edge)));
    }

    private static Edge edge(TraceRef source, TraceRef target, OpenLine line, Reason reason) {
        return Edge.during(source, target, Certainty.POSSIBLE, line.start(), line.end(), reason);
    }

    private Set<TraceRef> sources(OpenLine line) {
        Set<TraceRef> sources = new TreeSet<>(given(line));
        if (LineWays.mayDraw(line)) {
            sources.addAll(drawn(line));
        }
        if (line.isOfKind("cure-run", "test-run", "step")) {
            sources.add(line.node());
        }
        return sources;
    }

    private Set<TraceRef> given(OpenLine line) {
        List<TraceRef> given = line.parts().stream()
                .filter(part -> !part.isOf(TraceKind.CARRIER) && LineWays.mayGive(line, part))
                .map(Part::node)
                .toList();
        boolean namesAContainer = given.stream().anyMatch(node -> node.kind() == TraceKind.CONTAINER);
        return given.stream()
                .flatMap(node ->
                        node.kind() == TraceKind.LOT && !namesAContainer ? contents.with(node) : Stream.of(node))
                .collect(Collectors.toSet());
    }

    private Set<TraceRef> targets(OpenLine line, Happening acting) {
        Set<TraceRef> targets = new TreeSet<>(reach.of(acting).keySet());
        line.parts().stream()
                .filter(part -> part.isOf(TraceKind.LOT, TraceKind.CONTAINER) && LineWays.mayTake(line, part))
                .map(Part::node)
                .forEach(targets::add);
        return targets;
    }

    private Set<TraceRef> drawn(OpenLine line) {
        Set<TraceRef> drawn = new HashSet<>();
        Use use = new Use(line.at(), -1, null);
        for (StationPosition position : records.uses()
                .positions(line.positions().stream().map(Spot::position).collect(Collectors.toSet()))) {
            PositionTimeline timeline = records.uses().timeline(position);
            timeline.unloaded(use)
                    .forEach(candidate -> contents.with(candidate.lot()).forEach(drawn::add));
        }
        return drawn;
    }
}
