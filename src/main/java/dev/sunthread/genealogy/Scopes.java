package dev.sunthread.genealogy;

import dev.sunthread.genealogy.scope.Joinings;
import dev.sunthread.genealogy.scope.ScopeHistory;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.EdgeSource;
import dev.sunthread.genealogy.walk.Starts;
import dev.sunthread.genealogy.walk.Suspect;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Resolves a scope to suspects, as known at a cut-off. */
public final class Scopes {

    private final ScopeHistory history;
    private final EdgeSource edges;
    private final Starts starts;
    private final Joinings joinings;

    /**
     * {@code edges} tell parents and children, {@code starts} when units were born; {@code joinings} notes what joined
     * nothing.
     */
    public Scopes(ScopeHistory history, EdgeSource edges, Starts starts, Joinings joinings) {
        this.history = history;
        this.edges = edges;
        this.starts = starts;
        this.joinings = joinings;
    }

    /** The suspects in the order of their nodes. @throws Refused if the scope names what nobody recorded */
    public List<Suspect> resolve(Scope scope) {
        return List.copyOf(suspects(scope).values());
    }

    private Map<TraceRef, Suspect> suspects(Scope scope) {
        return switch (kind(scope)) {
            case JOINED -> joined(scope);
            case RELATED -> related(scope);
            case NAMED -> merged(history.named(scope, starts));
        };
    }

    private enum Kind {
        JOINED,
        RELATED,
        NAMED
    }

    private static Kind kind(Scope scope) {
        if (scope instanceof Scope.Any || scope instanceof Scope.All || scope instanceof Scope.Except) {
            return Kind.JOINED;
        }
        return scope instanceof Scope.Parents || scope instanceof Scope.Children ? Kind.RELATED : Kind.NAMED;
    }

    private Map<TraceRef, Suspect> joined(Scope scope) {
        if (scope instanceof Scope.Any any) {
            return merged(any.scopes().stream()
                    .flatMap(one -> suspects(one).values().stream())
                    .toList());
        }
        if (scope instanceof Scope.All all) {
            return inAll(all.scopes().stream().map(this::suspects).toList());
        }
        Scope.Except except = (Scope.Except) scope;
        return without(suspects(except.scope()), suspects(except.without()).keySet());
    }

    private Map<TraceRef, Suspect> inAll(List<Map<TraceRef, Suspect>> parts) {
        Map<TraceRef, Suspect> found = parts.stream().reduce(Scopes::inBoth).orElse(Map.of());
        if (found.isEmpty() && !parts.isEmpty() && parts.stream().noneMatch(Map::isEmpty)) {
            joinings.allFoundNothing();
        }
        return found;
    }

    private Map<TraceRef, Suspect> without(Map<TraceRef, Suspect> suspects, Set<TraceRef> taken) {
        Map<TraceRef, Suspect> left = new TreeMap<>(suspects);
        left.keySet().removeAll(taken);
        if (left.size() == suspects.size() && !left.isEmpty()) {
            joinings.exceptTookNothing();
        } else if (left.isEmpty() && !suspects.isEmpty()) {
            joinings.exceptTookAll();
        }
        return left;
    }

    private static Map<TraceRef, Suspect> inBoth(Map<TraceRef, Suspect> one, Map<TraceRef, Suspect> other) {
        Map<TraceRef, Suspect> both = new TreeMap<>();
        one.forEach((node, suspect) -> {
            Suspect same = other.get(node);
            if (same != null) {
                both.put(node, suspect.and(same));
            }
        });
        return both;
    }

    private Map<TraceRef, Suspect> related(Scope scope) {
        return scope instanceof Scope.Parents parents
                ? around(suspects(parents.scope()).keySet(), edges::outOf, Edge::to)
                : around(suspects(((Scope.Children) scope).scope()).keySet(), edges::into, Edge::from);
    }

    private Map<TraceRef, Suspect> around(
            Set<TraceRef> nodes,
            Function<Collection<TraceRef>, Collection<Edge>> leaving,
            Function<Edge, TraceRef> end) {
        Map<TraceRef, Suspect> found = new TreeMap<>();
        Set<TraceRef> seen = new HashSet<>(nodes);
        Collection<TraceRef> open = new ArrayList<>(nodes);
        while (!open.isEmpty()) {
            List<Edge> stays =
                    leaving.apply(open).stream().filter(Edge::placesUnit).toList();
            stays.stream()
                    .filter(edge -> end.apply(edge).kind() == TraceKind.UNIT)
                    .map(edge -> new Suspect(end.apply(edge), starts.of(end.apply(edge)), edge.certainty()))
                    .forEach(suspect -> found.merge(suspect.node(), suspect, Suspect::or));
            open = stays.stream().map(end).filter(seen::add).toList();
        }
        return found;
    }

    private static Map<TraceRef, Suspect> merged(Collection<Suspect> suspects) {
        return suspects.stream()
                .collect(Collectors.toMap(Suspect::node, Function.identity(), Suspect::or, TreeMap::new));
    }
}
