package dev.sunthread.genealogy.answer;

import dev.sunthread.genealogy.AnswerLine;
import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.answer.Answer.Shipped;
import dev.sunthread.genealogy.walk.Arrival;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.EdgeSource;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Puts what the walk found into lines that people read. */
final class Lines {

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("uuuu-MM-dd");

    private final Names names;
    private final Wording wording;
    private final Places places;
    private final HoldReasons holds;
    private final ZoneId zone;

    Lines(JdbcClient jdbc, long cutoff, EdgeSource edges, ZoneId zone) {
        this.names = new Names(jdbc, cutoff);
        this.wording = new Wording(names, zone);
        this.places = new Places(jdbc, cutoff, edges, names, zone);
        this.holds = new HoldReasons(jdbc, cutoff);
        this.zone = zone;
    }

    List<AnswerLine> of(Answer answer) {
        List<Arrival> reached = answer.reached();
        List<TraceRef> nodes = reached.stream().map(Arrival::node).toList();
        names.learn(nodes);
        holds.learn(nodes);
        places.learn(
                nodes.stream().filter(node -> node.kind() == TraceKind.UNIT).toList());
        List<AnswerLine> lines = new ArrayList<>(reached.size());
        reached.forEach(arrival -> lines.add(line(answer, arrival)));
        return lines;
    }

    /** How the lines of an answer were reached from each other. */
    List<FlowCount> flows(Answer answer) {
        return FlowCount.of(answer, node -> names.of(node).level());
    }

    /** What the answer was asked of, without steps. */
    List<SuspectLine> suspects(Answer answer, List<TraceRef> roots) {
        return roots.stream()
                .distinct()
                .filter(Answer::isThing)
                .map(root -> new SuspectLine(
                        names.of(root), Objects.requireNonNullElse(answer.ever(root), Certainty.CERTAIN)))
                .toList();
    }

    List<Named> namesOf(List<TraceRef> nodes) {
        names.learn(nodes);
        return nodes.stream().map(names::of).toList();
    }

    private AnswerLine line(Answer answer, Arrival arrival) {
        TraceRef node = arrival.node();
        Named named = names.of(node);
        List<Edge> path = arrival.path();
        boolean isUnit = node.kind() == TraceKind.UNIT;
        return new AnswerLine(
                named.kind(),
                named.level(),
                named.item(),
                named.name(),
                named.issuer(),
                arrival.certainty(),
                answer.now(node),
                answer.atShipment(node),
                answer.at(node),
                wording.reason(path),
                wording.steps(path),
                isUnit ? places.of(node) : "",
                isUnit ? places.within(node) : null,
                isUnit ? places.spot(node) : null,
                holds.on(node),
                answer.shipped(node).stream().map(this::words).toList());
    }

    private String words(Shipped shipped) {
        long at = shipped.shipment().shippedAt();
        String day = DAY.format(Instant.ofEpochSecond(at / 1_000_000).atZone(zone));
        return "%s to %s on %s, %s then"
                .formatted(
                        shipped.shipment().number(),
                        shipped.shipment().consignee(),
                        day,
                        shipped.certainty().name().toLowerCase(Locale.ROOT));
    }
}
