package dev.sunthread.genealogy.line;

import dev.sunthread.genealogy.position.Doubt;
import dev.sunthread.genealogy.records.OpenLine;
import dev.sunthread.genealogy.records.OpenLine.Part;
import dev.sunthread.genealogy.records.OpenLine.Spot;
import dev.sunthread.genealogy.records.UnitSigns;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
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
        return lines.stream().map(OpenLine::takesBack).filter(Objects::nonNull).collect(Collectors.toSet());
    }

    /** The units that lines tell to have been born, or may tell; with another birth they are two bodies. */
    public static Set<Long> born(List<OpenLine> lines) {
        return lines.stream()
                .filter(line -> line.isOfKind("birth"))
                .flatMap(line -> line.parts().stream())
                .map(part -> part.node().id())
                .collect(Collectors.toSet());
    }

    /** Of each unit the lines that tell, or may tell, that it went on: a step on it, or its shipment. */
    public static Map<TraceRef, List<OpenLine>> goingOn(List<OpenLine> lines) {
        Map<TraceRef, List<OpenLine>> ofUnits = new HashMap<>();
        lines.stream()
                .filter(line -> line.isOfKind("step", "shipment"))
                .forEach(line -> line.parts().stream()
                        .filter(part -> part.isOf(TraceKind.UNIT))
                        .forEach(part -> ofUnits.computeIfAbsent(part.node(), any -> new ArrayList<>())
                                .add(line)));
        return ofUnits;
    }

    /** The signs of a unit with its returns that lines tell: it may have been back then. */
    public static UnitSigns of(UnitSigns signs, List<OpenLine> lines) {
        List<Moment> returned = lines.stream()
                .filter(line -> line.isOfKind("return"))
                .filter(line ->
                        line.parts().stream().anyMatch(part -> part.node().equals(signs.node())))
                .map(OpenLine::at)
                .toList();
        return returned.isEmpty() ? signs : signs.returned(returned);
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
        boolean comesOn = line.isOfKind("charge");
        boolean ends = comesOn || line.isOfKind("discharge");
        List<Doubt> loaded = line.isOfKind("charge", "discharge", "step")
                ? line.parts().stream()
                        .filter(part ->
                                part.isOf(TraceKind.LOT) && !part.field().equals("into") && spot.mayBeOf(part))
                        .map(Part::node)
                        .map(lot -> new Doubt(lot, itemOf.apply(lot), comesOn, ends, line.at(), line.entry()))
                        .toList()
                : List.of();
        return ends && loaded.isEmpty()
                ? Stream.of(new Doubt(null, null, false, true, line.at(), line.entry()))
                : loaded.stream();
    }

    /** The entries that lines void or correct, each with the line. */
    public static Map<Long, Long> takingBack(List<OpenLine> lines) {
        Map<Long, Long> taking = new TreeMap<>();
        lines.stream()
                .filter(line -> line.takesBack() != null)
                .forEach(line -> taking.putIfAbsent(Objects.requireNonNull(line.takesBack()), line.entry()));
        return taking;
    }

    /** The first entry that a line takes back; the last number there is if none does. */
    public static long takenBackFrom(List<OpenLine> lines) {
        return takenBack(lines).stream().mapToLong(Long::longValue).min().orElse(Long.MAX_VALUE);
    }

    /** The positions where one of these lots may have been loaded by what lines tell. */
    public static Set<Long> positionsOf(List<OpenLine> lines, Set<Long> lots) {
        return lines.stream()
                .filter(line -> line.parts().stream()
                        .anyMatch(part -> part.isOf(TraceKind.LOT)
                                && lots.contains(part.node().id())))
                .flatMap(line -> line.positions().stream())
                .map(Spot::position)
                .collect(Collectors.toSet());
    }
}
