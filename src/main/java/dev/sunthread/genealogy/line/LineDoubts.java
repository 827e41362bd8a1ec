package dev.sunthread.genealogy.line;

import dev.sunthread.genealogy.position.Doubt;
import dev.sunthread.genealogy.records.OpenLine;
import dev.sunthread.genealogy.records.OpenLine.Part;
import dev.sunthread.genealogy.records.OpenLine.Spot;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What kept lines cast doubt on: what may have been loaded or taken off at positions, and entries they take back. */
public final class LineDoubts {

    private final List<OpenLine> lines;
    private final Function<TraceRef, @Nullable Long> itemOf;

    /** {@code itemOf} gives the item of a lot, null if no record tells it or several do. */
    public LineDoubts(List<OpenLine> lines, Function<TraceRef, @Nullable Long> itemOf) {
        this.lines = lines;
        this.itemOf = itemOf;
    }

    /** The entries that lines void or correct. */
    public static Set<Long> takenBack(List<OpenLine> lines) {
        return lines.stream()
                .map(OpenLine::takesBack)
                .filter(Objects::nonNull)
                .collect(Collectors.toSet());
    }

    /** What may have happened at a position. */
    public List<Doubt> at(long position) {
        return lines.stream()
                .flatMap(line -> line.positions().stream()
                        .filter(spot -> spot.position() == position)
                        .flatMap(spot -> at(spot, line)))
                .distinct()
                .toList();
    }

    private Stream<Doubt> at(Spot spot, OpenLine line) {
        boolean unread = !LineWays.isRead(line);
        boolean comesOn = line.isOfKind("charge");
        boolean ends = unread || comesOn || line.isOfKind("discharge");
        List<Doubt> loaded = unread || line.isOfKind("charge", "discharge", "step")
                ? line.parts().stream()
                        .filter(part -> part.isOf(TraceKind.LOT) && !part.field().equals("into") && spot.mayBeOf(part))
                        .map(Part::node)
                        .map(lot -> new Doubt(lot, itemOf.apply(lot), comesOn, ends, line.at(), line.entry()))
                        .toList()
                : List.of();
        return ends && loaded.isEmpty()
                ? Stream.of(new Doubt(null, null, false, true, line.at(), line.entry()))
                : loaded.stream();
    }

    /** The positions where one of these lots may have been loaded by what lines tell. */
    public static Set<Long> positionsOf(List<OpenLine> lines, Set<Long> lots) {
        return lines.stream()
                .filter(line -> line.parts().stream()
                        .anyMatch(part -> part.isOf(TraceKind.LOT) && lots.contains(part.node().id())))
                .flatMap(line -> line.positions().stream())
                .map(Spot::position)
                .collect(Collectors.toSet());
    }
}
