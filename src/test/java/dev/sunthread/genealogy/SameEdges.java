package dev.sunthread.genealogy;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.EdgeSource;
import dev.sunthread.genealogy.walk.Reason;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/** Compares the edges that a source gives with those it should give, whatever their order and reasons. */
record SameEdges(String of, List<Edge> expected) {

    private static final Reason ANY = Reason.of("any", 0);

    /** Whether the source gives the edges that leave these nodes and those that lead to them, no more and no fewer. */
    void assertGivenBy(EdgeSource source, Collection<TraceRef> nodes) {
        assertSame("out of " + nodes, source.outOf(nodes), edge -> nodes.contains(edge.from()));
        assertSame("into " + nodes, source.into(nodes), edge -> nodes.contains(edge.to()));
    }

    private void assertSame(String asked, Collection<Edge> given, java.util.function.Predicate<Edge> asks) {
        List<Edge> missing = bare(expected.stream().filter(asks).toList());
        bare(given).forEach(missing::remove);
        List<Edge> more = bare(given);
        bare(expected.stream().filter(asks).toList()).forEach(more::remove);
        assertThat(missing)
                .as("%s, %s: missing, while there are %s", of, asked, more)
                .isEmpty();
        assertThat(more).as("%s, %s: too many", of, asked).isEmpty();
    }

    private static List<Edge> bare(Collection<Edge> edges) {
        List<Edge> bare = new ArrayList<>();
        // what nothing names yet is asked for here only, and may be a source if it is asked for
        edges.stream()
                .filter(edge -> edge.to().kind() != TraceKind.RECOVERY_GAP)
                .map(edge -> new Edge(
                        edge.from(),
                        edge.to(),
                        edge.certainty(),
                        edge.begin(),
                        edge.lastCrossing(),
                        edge.stayEnd(),
                        ANY))
                .forEach(bare::add);
        return bare;
    }
}
