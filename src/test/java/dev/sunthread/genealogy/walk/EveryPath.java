package dev.sunthread.genealogy.walk;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.Question;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The path rule by brute force: every path is written down whole and judged by the sentence itself, pair by pair.
 * Paths may pass a node again, but no edge twice: leaving out the stretch between two crossings of an edge leaves out
 * pairs and adds none, so what a path with a repeated edge reaches, one without it reaches as well and no later. Only
 * where matter was taken out of a unit in between, an edge counts once before and once after that.
 */
public final class EveryPath {

    private final List<List<Edge>> paths = new ArrayList<>();
    private final TraceRef suspect;
    private final long start;

    public EveryPath(History history, TraceRef suspect, long start) {
        this.suspect = suspect;
        this.start = start;
        extend(history, List.of(), suspect);
    }

    private void extend(History history, List<Edge> path, TraceRef end) {
        paths.add(path);
        for (Edge edge : history.edges) {
            if (edge.from().equals(end) && mayCross(path, edge)) {
                List<Edge> longer = new ArrayList<>(path);
                longer.add(edge);
                // what does not count ever, with any class, counts nowhere, however it goes on: its pairs stay
                if (counts(longer, Certainty.UNPROVEN, Question.EVER)) {
                    extend(history, longer, edge.to());
                }
            }
        }
    }

    private static boolean mayCross(List<Edge> path, Edge edge) {
        int first = crossing(path, edge);
        return first == path.size()
                || path.stream().skip(first).anyMatch(Edge::takesOut)
                        && path.stream().filter(crossed -> crossed == edge).count() == 1;
    }

    private static int crossing(List<Edge> path, Edge edge) {
        int i = 0;
        while (i < path.size() && path.get(i) != edge) {
            i++;
        }
        return i;
    }

    /** For each node that a path of this class reaches, the earliest arrival. */
    public Map<TraceRef, Long> reached(Certainty weakest, Question question) {
        Map<TraceRef, Long> reached = new TreeMap<>();
        for (List<Edge> path : paths) {
            if (counts(path, weakest, question)) {
                reached.merge(end(path), arrival(path, weakest), Math::min);
            }
        }
        return reached;
    }

    private boolean counts(List<Edge> path, Certainty weakest, Question question) {
        for (int j = 0; j < path.size(); j++) {
            Edge later = path.get(j);
            if (later.certainty().compareTo(weakest) > 0
                    || !(stays(later, weakest, question) || isTakenOutAfter(path, j, weakest))
                    || start > last(later, weakest)) {
                return false;
            }
            for (int i = 0; i < j; i++) {
                if (begin(path.get(i), weakest) > last(later, weakest)) {
                    return false;
                }
            }
        }
        return true;
    }

    // what is taken out of a unit stays where it went, whatever leaves later
    private boolean isTakenOutAfter(List<Edge> path, int before, Certainty weakest) {
        return weakest != Certainty.CERTAIN && path.stream().skip(before + 1L).anyMatch(Edge::takesOut);
    }

    private boolean stays(Edge edge, Certainty weakest, Question question) {
        if (question.isEver()) {
            return true;
        }
        long end = weakest == Certainty.CERTAIN
                ? edge.stayEnd().early()
                : edge.stayEnd().late();
        return begin(edge, weakest) <= question.instant() && (end > question.instant() || end == Long.MAX_VALUE);
    }

    private long begin(Edge edge, Certainty weakest) {
        return weakest == Certainty.CERTAIN ? edge.begin().late() : edge.begin().early();
    }

    private long last(Edge edge, Certainty weakest) {
        return weakest == Certainty.CERTAIN
                ? edge.lastCrossing().early()
                : edge.lastCrossing().late();
    }

    private long arrival(List<Edge> path, Certainty weakest) {
        return Math.max(
                start,
                path.stream().mapToLong(edge -> begin(edge, weakest)).max().orElse(start));
    }

    private TraceRef end(List<Edge> path) {
        return path.isEmpty() ? suspect : path.get(path.size() - 1).to();
    }
}
