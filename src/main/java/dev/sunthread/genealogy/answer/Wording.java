package dev.sunthread.genealogy.answer;

import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Says in words why something is in an answer, with times in the plant's zone. */
final class Wording {

    private static final Set<TraceKind> WITHOUT_NAME = EnumSet.of(
            TraceKind.GAP,
            TraceKind.INSIDE_GAP,
            TraceKind.AROUND_GAP,
            TraceKind.RECOVERY_GAP,
            TraceKind.LOT_CONTENT,
            TraceKind.KEPT_LINE);

    private final Names names;
    private final Sentences sentences;

    Wording(Names names, ZoneId zone) {
        this.names = names;
        this.sentences = new Sentences(names, zone);
    }

    /** Each step of a path, in words. */
    List<String> steps(List<Edge> path) {
        return path.stream().map(sentences::of).toList();
    }

    /** The shortest reason: how it began, and where that led. */
    String reason(List<Edge> path) {
        if (path.isEmpty()) {
            return "It is what the trace began with";
        }
        List<String> told = new ArrayList<>();
        int next = 0;
        do {
            told.add(sentences.of(path.get(next)));
            next++;
        } while (next < path.size() && !isNamed(path.get(next - 1).to()));
        List<String> way = path.subList(next, path.size()).stream()
                .map(Edge::to)
                .filter(Wording::isNamed)
                .map(node -> names.of(node).words())
                .toList();
        String began = String.join("; ", told);
        return way.isEmpty() ? began : began + "; from there into " + String.join(", then ", way);
    }

    private static boolean isNamed(TraceRef node) {
        return !WITHOUT_NAME.contains(node.kind());
    }
}
