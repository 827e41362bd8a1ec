package dev.sunthread.journal;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.EnvelopeReader;
import dev.sunthread.ledger.Kinds;
import dev.sunthread.ledger.Manner;
import dev.sunthread.ledger.body.Shape;
import dev.sunthread.testing.SunthreadTest;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.transaction.support.TransactionTemplate;

/** A well-formed line is recorded or refused with a reason, however little sense it makes; the database never has to. */
@SunthreadTest
class OddValueTests {

    @Autowired
    Kinds kinds;

    @Autowired
    Door door;

    @Autowired
    Imports imports;

    @Autowired
    TransactionTemplate transaction;

    @Test
    void everyWellFormedLineIsRecordedOrRefusedWithAReason() throws IOException {
        Mutations.ofHead(EveryKind.lines().get(0)).odd().forEach(this::isTakenOrRefused);
        for (String line : EveryKind.lines()) {
            odd(line).forEach(this::isTakenOrRefused);
            imports.takeLine(line, new Sender("import", "odd"));
        }
    }

    private List<Mutation> odd(String line) {
        return kinds.all().stream()
                .filter(kind -> kind.name().equals(EveryKind.kind(line)))
                .flatMap(kind -> Mutations.ofBody(line, Shape.of(kind.body())).odd().stream())
                .toList();
    }

    private void isTakenOrRefused(Mutation mutation) {
        transaction.executeWithoutResult(status -> {
            try {
                door.acceptWithin(EnvelopeReader.read(mutation.line()), Manner.TOLD);
            } catch (Refused e) {
                assertThat(e.reason()).isNotBlank();
                assertThat(e.remedy()).isNotBlank();
            } catch (RuntimeException e) {
                throw new AssertionError(mutation.toString(), e);
            }
            status.setRollbackOnly();
        });
    }
}
