package dev.sunthread.journal;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.journal.LineOutcome.Outcome;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.EnvelopeReader;
import dev.sunthread.ledger.Kinds;
import dev.sunthread.ledger.Manner;
import dev.sunthread.ledger.body.Shape;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Tables;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;

/** No wrong line is taken, lost or half-applied, and none harms its neighbours. */
@SunthreadTest
class MutationTests {

    private static final Sender SENDER = new Sender("import", "changed.ndjson");

    /** What may be left out of some lines but not of this one, because of what else it says. */
    private static final Set<String> NEEDED_HERE = Set.of(
            "item body.level",
            "step body.uses[0].quantity",
            "step body.uses[0].unitOfMeasure",
            "installation body.child.unit",
            "installation body.child.lot",
            "installation body.child.quantity",
            "installation body.child.unitOfMeasure",
            "removal body.child.unit",
            "container body.containers[0].quantity",
            "container body.containers[0].unitOfMeasure",
            "split body.into[0].quantity",
            "split body.into[0].unitOfMeasure",
            "blend body.quantity",
            "blend body.unitOfMeasure",
            "blend body.components[0].quantity",
            "blend body.components[0].unitOfMeasure",
            "merge body.quantity",
            "merge body.unitOfMeasure",
            "regrade body.quantity",
            "regrade body.unitOfMeasure",
            "lot-ending body.quantity",
            "lot-ending body.unitOfMeasure",
            "station body.positions",
            "route body.operations[0].consumes",
            "carrier-load body.loads[0].unit",
            "carrier-unload body.unloads[0].unit",
            "recovery body.quantity",
            "recovery body.unitOfMeasure",
            "recipe body.terms.thermal.degree.k1",
            "specification body.terms.curves[0].powerOrder",
            "specification body.terms.curves[0].powerPoints",
            "calibration body.errors[0].offset",
            "verification body.errors[0].percent",
            "deviation body.unit",
            "deviation body.specification",
            "scan-choice body.item");

    @Autowired
    Kinds kinds;

    @Autowired
    Door door;

    @Autowired
    Imports imports;

    @Autowired
    StateCheck check;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    TransactionTemplate transaction;

    private int neighbours;

    @Test
    void keepsEveryWrongLineWithItsReasonAndTakesItsNeighbours() throws IOException {
        Set<String> changed = new HashSet<>();
        imports.takeLine(neighbour(), SENDER);
        for (String line : EveryKind.lines()) {
            String kind = EveryKind.kind(line);
            if (kind.equals("birth")) {
                importBetweenNeighbours(Mutations.ofHead(line).wrong());
            }
            if (line.equals(EveryKind.examples().get(kind))) {
                changed.add(kind);
                changedLinesAreKept(kind, line);
            }
            imports.takeLine(line, SENDER);
        }
        assertThat(changed).hasSameSizeAs(kinds.all());
        assertThat(check.differences()).isEmpty();
    }

    private void changedLinesAreKept(String kind, String line) throws IOException {
        Mutations mutations = Mutations.ofBody(line, shapeOf(kind));
        importBetweenNeighbours(mutations.wrong());
        if (kind.equals("correction")) {
            importBetweenNeighbours(
                    Mutations.ofBodyInside(line, shapeOf("charge")).wrong());
        }
        for (Mutation without : mutations.leftOut()) {
            if (!NEEDED_HERE.contains(kind + " " + without.field())) {
                transaction.executeWithoutResult(status -> {
                    assertThat(door.accept(EnvelopeReader.read(without.line()), Manner.TOLD)
                                    .isNew())
                            .as(without.toString())
                            .isTrue();
                    status.setRollbackOnly();
                });
            }
        }
    }

    private void importBetweenNeighbours(List<Mutation> mutations) throws IOException {
        StringBuilder journal = new StringBuilder();
        mutations.forEach(mutation ->
                journal.append(neighbour()).append('\n').append(mutation.line()).append('\n'));
        journal.append(neighbour());
        Map<String, Long> counts = Tables.countsOfWhatIsTold(jdbc);
        List<LineOutcome> outcomes = new ArrayList<>();
        imports.run(Bytes.of(journal.toString()), SENDER, outcomes::add);
        assertThat(outcomes).hasSize(2 * mutations.size() + 1);
        for (int i = 0; i < outcomes.size(); i++) {
            assertThat(outcomes.get(i).line()).isEqualTo(i + 1);
            if (i % 2 == 0) {
                assertThat(outcomes.get(i).outcome()).isEqualTo(Outcome.ACCEPTED);
            } else {
                isKept(mutations.get(i / 2), outcomes.get(i));
            }
        }
        counts.merge("holds.hold", mutations.size() + 1L, Long::sum);
        assertThat(Tables.countsOfWhatIsTold(jdbc)).isEqualTo(counts);
    }

    private void isKept(Mutation mutation, LineOutcome outcome) {
        assertThat(outcome.outcome()).as(mutation.toString()).isEqualTo(Outcome.KEPT_IN_INBOX);
        assertThat(outcome.problems())
                .as(mutation.toString())
                .allMatch(problem ->
                        !problem.reason().isBlank() && !problem.remedy().isBlank())
                .anyMatch(mutation::isNamedBy);
        assertThat(jdbc.sql("SELECT l.text FROM inbox.line l JOIN ledger.entry e ON e.number = l.entry WHERE e.id = ?")
                        .param(outcome.id())
                        .query(String.class)
                        .single())
                .isEqualTo(
                        mutation.line().length() <= 1_000_000
                                ? mutation.line()
                                : mutation.line().substring(0, 1_000_000));
    }

    /** A hold of a lot that is known by then: it changes one table by one row. */
    private String neighbour() {
        return """
                {"id":"neighbour-%d","kind":"hold","version":1,"occurredAt":"2026-03-01T08:00:00Z","actor":"qe-01",\
                "source":"desk","body":{"lots":["L-NEIGHBOUR"],"reason":"to be seen"}}""".formatted(++neighbours);
    }

    private Shape<?> shapeOf(String kind) {
        return Shape.of(kinds.all().stream()
                .filter(one -> one.name().equals(kind))
                .findFirst()
                .orElseThrow()
                .body());
    }
}
