package dev.sunthread.genealogy.line;

import dev.sunthread.genealogy.records.Installation;
import dev.sunthread.genealogy.records.OpenLine;
import dev.sunthread.genealogy.records.OpenLine.Part;
import dev.sunthread.genealogy.records.PlacementFacts;
import dev.sunthread.genealogy.records.Removal;
import dev.sunthread.inbox.LineText;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What kept lines tell of things put into units and onto carriers, and taken out and off again. */
public final class KeptStays {

    private final PlacementFacts inUnits;
    private final PlacementFacts onCarriers;
    private final Set<Long> takenBack;

    public KeptStays(List<OpenLine> lines) {
        this.takenBack = LineDoubts.takenBack(lines);
        List<Installation> put = new ArrayList<>();
        List<Removal> taken = new ArrayList<>();
        List<Installation> loaded = new ArrayList<>();
        List<Removal> unloaded = new ArrayList<>();
        for (OpenLine line : lines) {
            if (line.isOfKind("installation")) {
                pairs(line, "child", "parent").forEach(pair -> put.add(pair.put(line, line.place())));
                leaves(line).forEach(pair -> taken.add(pair.taken(line, null)));
            } else if (line.isOfKind("removal")) {
                pairs(line, "child", "parent").forEach(pair -> taken.add(pair.taken(line, line.place())));
                leaves(line).forEach(pair -> taken.add(pair.taken(line, null)));
            } else if (line.isOfKind("carrier-load")) {
                pairs(line, "loads", "carrier").forEach(pair -> loaded.add(pair.put(line, null)));
            } else if (line.isOfKind("carrier-unload")) {
                unloads(line).forEach(pair -> unloaded.add(pair.taken(line, null)));
            }
        }
        this.inUnits = new PlacementFacts(put, taken);
        this.onCarriers = new PlacementFacts(loaded, unloaded);
    }

    public PlacementFacts inUnits() {
        return inUnits;
    }

    public PlacementFacts onCarriers() {
        return onCarriers;
    }

    /** Entries that lines void or correct, so that what they tell may not be so. */
    public Set<Long> takenBack() {
        return takenBack;
    }

    private record Pair(TraceRef child, TraceRef parent) {

        Installation put(OpenLine line, @Nullable String place) {
            return new Installation(line.entry(), child, parent, place, line.at());
        }

        Removal taken(OpenLine line, @Nullable String place) {
            return new Removal(line.entry(), child, parent, place, line.at());
        }
    }

    private static Stream<Pair> pairs(OpenLine line, String inner, String outer) {
        return line.parts().stream()
                .filter(parent -> parent.isOf(TraceKind.UNIT, TraceKind.CARRIER) && isIn(parent, outer))
                .flatMap(parent -> line.parts().stream()
                        .filter(child -> isIn(child, inner) && !child.node().equals(parent.node()))
                        .filter(child -> !child.isOf(TraceKind.CONTAINER))
                        .map(child -> new Pair(child.node(), parent.node())));
    }

    // a line that broke off before the parent: the child left wherever it was, which is told of the child itself
    private static Stream<Pair> leaves(OpenLine line) {
        return pairs(line, "child", "parent").findAny().isPresent()
                ? Stream.empty()
                : line.parts().stream()
                        .filter(part -> part.isOf(TraceKind.UNIT) && isIn(part, "child"))
                        .map(part -> new Pair(part.node(), part.node()));
    }

    // an unload that names nothing took off everything: it is told of the carrier itself
    private static Stream<Pair> unloads(OpenLine line) {
        List<Pair> named = pairs(line, "unloads", "carrier").toList();
        return named.isEmpty()
                ? line.parts().stream()
                        .filter(part -> part.isOf(TraceKind.CARRIER))
                        .map(part -> new Pair(part.node(), part.node()))
                : named.stream();
    }

    private static boolean isIn(Part part, String place) {
        return part.field().equals(place)
                || part.field().startsWith(place + ".")
                || part.field().startsWith(LineText.SOMEWHERE);
    }
}
