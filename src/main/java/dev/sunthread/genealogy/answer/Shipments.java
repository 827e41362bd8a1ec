package dev.sunthread.genealogy.answer;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.Question;
import dev.sunthread.genealogy.history.Clocks;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.EdgeSource;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Known;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The shipments of the units of an answer, and what was inside them when they left. */
final class Shipments {

    /**
     * One shipment: when it left, in microseconds, and the units it names.
     *
     * @param left when it may have left, which is any time of a spell of times that are not proven
     */
    record Shipment(long entry, String number, String consignee, long shippedAt, Moment left, Set<TraceRef> units) {

        Question then() {
            return Question.at(left);
        }
    }

    private record Row(long entry, String number, String consignee, long shippedAt, long unit) {}

    private static final String OF_UNITS = """
            SELECT h.entry, h.number, h.consignee, (extract(epoch FROM h.shipped_at) * 1000000)::bigint AS shipped_at, u.unit
            FROM production.shipment h JOIN production.shipment_unit u USING (entry)
            WHERE u.unit = ANY (:ids) AND %s ORDER BY h.shipped_at, h.entry
            """.formatted(Known.at("h.entry"));

    private final JdbcClient jdbc;
    private final long cutoff;
    private final EdgeSource edges;
    private final Clocks clocks;

    Shipments(JdbcClient jdbc, long cutoff, EdgeSource edges, Clocks clocks) {
        this.jdbc = jdbc;
        this.cutoff = cutoff;
        this.edges = edges;
        this.clocks = clocks;
    }

    /** The shipments that name any of these units, in the order of time, each with those of the units it names. */
    Collection<Shipment> of(Collection<TraceRef> units) {
        Map<Long, Shipment> shipments = new TreeMap<>();
        List<Row> rows = jdbc.sql(OF_UNITS)
                .param("cutoff", cutoff)
                .param("ids", units.stream().map(TraceRef::id).toArray(Long[]::new))
                .query(DataClassRowMapper.newInstance(Row.class))
                .list();
        List<Shipment> ordered = new ArrayList<>();
        for (Row row : rows) {
            Shipment shipment = shipments.get(row.entry());
            if (shipment == null) {
                shipment = new Shipment(
                        row.entry(),
                        row.number(),
                        row.consignee(),
                        row.shippedAt(),
                        clocks.proven(row.shippedAt()),
                        new HashSet<>());
                shipments.put(row.entry(), shipment);
                ordered.add(shipment);
            }
            shipment.units().add(TraceRef.unit(row.unit()));
        }
        return ordered;
    }

    /** How surely a unit was among what a shipment carried: named by it, or inside what it names; null if it was not. */
    @Nullable
    Certainty carried(Shipment shipment, TraceRef unit) {
        return Arrays.stream(Certainty.values())
                .filter(certainty -> isCarried(shipment, unit, certainty))
                .findFirst()
                .orElse(null);
    }

    private boolean isCarried(Shipment shipment, TraceRef unit, Certainty certainty) {
        Question then = shipment.then();
        Set<TraceRef> seen = new HashSet<>(Set.of(unit));
        Deque<TraceRef> open = new ArrayDeque<>(seen);
        while (!open.isEmpty()) {
            TraceRef node = open.remove();
            if (shipment.units().contains(node)) {
                return true;
            }
            edges.outOf(List.of(node)).stream()
                    .filter(edge -> places(edge, certainty, then))
                    .map(Edge::to)
                    .filter(seen::add)
                    .forEach(open::add);
        }
        return false;
    }

    /** Whether the edge puts a unit, at least so surely, where it was at the time. */
    static boolean places(Edge edge, Certainty certainty, Question then) {
        return edge.placesUnit()
                && edge.certainty().isAtLeast(certainty)
                && (certainty == Certainty.CERTAIN ? then.surelyCovers(edge) : then.possiblyCovers(edge));
    }
}
