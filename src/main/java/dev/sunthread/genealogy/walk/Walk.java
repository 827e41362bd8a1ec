package dev.sunthread.genealogy.walk;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.Question;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * The walk through the genealogy, both ways, under the path rule: a path counts if no edge begins later than any edge
 * after it can last be crossed, and the suspect starts no later than that either.
 *
 * <p>Three searches give the classes: certain edges only, then also possible ones, then all; a node has the class of
 * the strongest search that reaches it. Forward and backward agree: a node is in the forward answer of a suspect
 * exactly if the suspect is in the backward answer of the node, per question and class. A suspect is in its own
 * answer, whatever is asked. Edges once read serve every later question, so one walk belongs to one cut-off and one
 * thread.
 */
public final class Walk {

    private final Graph forward;
    private final Graph backward;
    private final Starts starts;

    /** A walk in which every suspect counts since ever. */
    public Walk(EdgeSource source) {
        this(source, node -> Long.MIN_VALUE);
    }

    /** A walk in which {@code starts} tells since when a node counts as a suspect; since ever for lots. */
    public Walk(EdgeSource source, Starts starts) {
        this.forward = new Graph(source, Direction.FORWARD);
        this.backward = new Graph(source, Direction.BACKWARD);
        this.starts = starts;
    }

    /** A walk over other edges in which nodes count as suspects since the same instants. */
    public Walk over(EdgeSource source) {
        return new Walk(source, starts);
    }

    /** Everything that a suspect reaches, each suspect counting since its start. */
    public SortedMap<TraceRef, Arrival> forward(Collection<TraceRef> suspects, Question question) {
        return forwardFrom(
                suspects.stream()
                        .map(node -> new Suspect(node, starts.of(node), Certainty.CERTAIN))
                        .toList(),
                question);
    }

    /** Everything that a suspect reaches, each counting as surely, and since the instant, that it says itself. */
    public SortedMap<TraceRef, Arrival> forwardFrom(Collection<Suspect> suspects, Question question) {
        return answer(
                forward,
                certainty -> {
                    SortedMap<TraceRef, Long> from = new TreeMap<>();
                    suspects.stream()
                            .filter(suspect -> suspect.certainty().isAtLeast(certainty))
                            .forEach(suspect -> from.merge(suspect.node(), suspect.start(), Math::min));
                    return from;
                },
                question);
    }

    /** Every node that, counting since its own start, reaches one of the targets. */
    public SortedMap<TraceRef, Arrival> backward(Collection<TraceRef> targets, Question question) {
        SortedMap<TraceRef, Long> from = new TreeMap<>();
        targets.forEach(target -> from.put(target, Long.MAX_VALUE));
        return answer(backward, any -> from, question);
    }

    // the widest search comes first: it reads whole frontiers, and the narrower ones find all they need in memory
    private SortedMap<TraceRef, Arrival> answer(
            Graph graph, Function<Certainty, SortedMap<TraceRef, Long>> from, Question question) {
        SortedMap<TraceRef, Arrival> answer = new TreeMap<>();
        for (Certainty certainty : List.of(Certainty.UNPROVEN, Certainty.POSSIBLE, Certainty.CERTAIN)) {
            Search search = new Search(graph, new Lens(certainty, question, graph.direction()));
            search.run(from.apply(certainty));
            arrivals(graph, search, certainty).forEach(arrival -> answer.put(arrival.node(), arrival));
        }
        return answer;
    }

    private List<Arrival> arrivals(Graph graph, Search search, Certainty certainty) {
        List<Arrival> arrivals = new ArrayList<>();
        learnStarts(graph, search);
        for (int number = 0; number < graph.size(); number++) {
            Label label = search.label(number);
            if (label != null && counts(graph.node(number), graph.direction(), search.instant(label))) {
                arrivals.add(
                        new Arrival(graph.node(number), certainty, search.instant(label), graph.direction(), label));
            }
        }
        return arrivals;
    }

    private void learnStarts(Graph graph, Search search) {
        if (graph.direction() == Direction.BACKWARD) {
            starts.learn(IntStream.range(0, graph.size())
                    .filter(number -> search.label(number) != null)
                    .mapToObj(graph::node)
                    .toList());
        }
    }

    private boolean counts(TraceRef node, Direction direction, long instant) {
        return direction == Direction.FORWARD || starts.of(node) <= instant;
    }
}
