package dev.sunthread.genealogy.line;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.Kinds;
import dev.sunthread.testing.SunthreadTest;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Each kind of happening has its ways, so that a new one is thought of. */
@SunthreadTest
class LineWaysTests {

    @Autowired
    Kinds kinds;

    @Test
    void everyKindOfTheLedgerMovesMatterOrTakesBackOrMovesNothing() {
        // a line about a kept line could be any line
        assertThat(Stream.of(LineWays.MOVING, LineWays.TAKING_BACK, LineWays.MOVING_NOTHING)
                        .flatMap(Set::stream))
                .containsExactlyInAnyOrderElementsOf(kinds.all().stream()
                        .map(Kind::name)
                        .filter(name -> !name.equals("kept-line"))
                        .distinct()
                        .toList());
    }
}
