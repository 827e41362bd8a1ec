package dev.sunthread.genealogy;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.genealogy.AnswersByHand.Classes;
import dev.sunthread.genealogy.walk.Arrival;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.genealogy.walk.EdgeSource;
import dev.sunthread.genealogy.walk.History;
import dev.sunthread.genealogy.walk.Walk;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.kernel.UnitId;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A random plant in a database, beside what its facts say when they are read by hand. */
final class TracedPlant {

    private final String name;
    private final List<Said> said;
    private final Numbers numbers;
    private final Map<String, TraceRef> nodes = new TreeMap<>();

    TracedPlant(String name, List<Said> said, JdbcClient jdbc) {
        this.name = name;
        this.said = said;
        this.numbers = new StoredNumbers(jdbc);
        read(jdbc, "SELECT number, id FROM materials.lot WHERE number LIKE ?", TraceKind.LOT);
        read(jdbc, "SELECT serial, id FROM production.unit WHERE serial LIKE ?", TraceKind.UNIT);
    }

    private void read(JdbcClient jdbc, String sql, TraceKind kind) {
        jdbc.sql(sql)
                .param(name + "-%")
                .query((row, number) -> nodes.put(row.getString(1), new TraceRef(kind, row.getLong(2))))
                .list();
    }

    String name() {
        return name;
    }

    List<Said> said() {
        return said;
    }

    AnswersByHand byHand() {
        return new AnswersByHand(new FactsByHand(said), edgesByHand(said.size()), nodes);
    }

    /** Whether the database gives, both ways, exactly the edges that follow from the first facts. */
    void assertSameEdges(EdgeSource history, int told) {
        EdgesByHand byHand = edgesByHand(told);
        SameEdges same = new SameEdges(name + " after " + told + " facts", byHand.all());
        same.assertGivenBy(history, nodes.values());
        same.assertGivenBy(history, byHand.others(nodes));
    }

    /** The same, asked for each node alone. */
    void assertSameEdgesOfEachNode(EdgeSource history) {
        SameEdges same = new SameEdges(name, edgesByHand(said.size()).all());
        nodes.values().forEach(node -> same.assertGivenBy(history, List.of(node)));
    }

    private EdgesByHand edgesByHand(int told) {
        return new EdgesByHand(said.subList(0, told), numbers, nodes);
    }

    /** Whether the walk finds what all paths written down give, both ways, for these questions. */
    void assertSameWalks(AnswersByHand byHand, Collection<Question> questions) {
        EdgesByHand read = edgesByHand(said.size());
        Walk walk = new Walk(History.of(byHand.edges().toArray(Edge[]::new)), read::start);
        for (Question question : questions) {
            for (TraceRef node : nodes.values()) {
                List<TraceRef> only = List.of(node);
                assertThat(classes(walk.forward(only, question)))
                        .as("%s from %s, %s", name, node, question)
                        .isEqualTo(byHand.forward(only, question));
                assertThat(classes(walk.backward(only, question)))
                        .as("%s to %s, %s", name, node, question)
                        .isEqualTo(byHand.backward(only, question));
            }
        }
    }

    private Map<TraceRef, Certainty> classes(Map<TraceRef, Arrival> arrivals) {
        Map<TraceRef, Certainty> classes = new TreeMap<>();
        arrivals.forEach((node, arrival) -> classes.put(node, arrival.certainty()));
        classes.keySet().retainAll(nodes.values());
        return classes;
    }

    /** Every root that a person can ask for: lots and units that were named, and supplier lots that were received. */
    List<Root> roots() {
        Stream<Root> named = nodes.entrySet().stream()
                .map(node -> node.getValue().kind() == TraceKind.LOT
                        ? new Root.OfLot(node.getKey())
                        : new Root.OfUnit(unit(node.getKey())));
        return Stream.concat(named, behind().keySet().stream().map(Root.OfSupplierLot::new))
                .toList();
    }

    static UnitId unit(String serial) {
        String own = serial.substring(serial.lastIndexOf('-') + 1);
        return UnitId.of(null, own.startsWith("r") ? "RCV" : own.startsWith("w") ? "WALL" : "MOD", serial);
    }

    /** What the answer has to be, by the names of its lines. */
    Map<String, Classes> expected(Root root, AnswersByHand byHand, OffsetDateTime at) {
        Map<TraceRef, Classes> lines = byHand.answer(way(root), suspects(root), Said.micros(at));
        Map<String, Classes> named = new TreeMap<>();
        nodes.forEach((serial, node) -> {
            if (lines.containsKey(node)) {
                named.put(serial.substring(name.length()), lines.get(node));
            }
        });
        return named;
    }

    static Way way(Root root) {
        return root instanceof Root.OfUnit ? Way.BACKWARD : Way.FORWARD;
    }

    private Collection<TraceRef> suspects(Root root) {
        if (root instanceof Root.OfSupplierLot supplier) {
            return behind().getOrDefault(supplier.text(), new TreeSet<>());
        }
        return List.of(nodes.get(
                root instanceof Root.OfLot lot
                        ? lot.number()
                        : ((Root.OfUnit) root).id().serial()));
    }

    private Map<String, TreeSet<TraceRef>> behind() {
        Map<String, TreeSet<TraceRef>> behind = new TreeMap<>();
        new FactsByHand(said)
                .of("receipt")
                .forEach(receipt -> receipt.texts("supplierLots")
                        .forEach(supplier -> behind.computeIfAbsent(supplier, any -> new TreeSet<>())
                                .add(nodes.get(receipt.text("lot")))));
        return behind;
    }
}
