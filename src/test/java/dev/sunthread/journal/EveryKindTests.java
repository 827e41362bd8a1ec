package dev.sunthread.journal;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.Kinds;
import dev.sunthread.testing.SunthreadTest;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.erdtman.jcs.JsonCanonicalizer;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.json.JsonMapper;

/** The journal of every kind that the reference quotes. */
@SunthreadTest
class EveryKindTests {

    @Autowired
    Kinds kinds;

    @Autowired
    Imports imports;

    @Autowired
    StateCheck check;

    @Autowired
    JdbcClient jdbc;

    @Test
    void hasALineOfEveryKind() {
        assertThat(EveryKind.examples().keySet())
                .containsExactlyInAnyOrderElementsOf(
                        kinds.all().stream().map(Kind::name).toList());
    }

    @Test
    void isAcceptedLineByLineWithTheOneFindingItSettles() throws IOException {
        List<LineOutcome> outcomes = new ArrayList<>();
        ImportSummary summary =
                imports.run(EveryKind.stream(), new Sender("import", "every-kind.ndjson"), outcomes::add);
        assertThat(outcomes).flatExtracting(LineOutcome::problems).isEmpty();
        assertThat(outcomes)
                .filteredOn(line -> line.outcome() == LineOutcome.Outcome.ACCEPTED_WITH_FINDING)
                .extracting(LineOutcome::id)
                .containsExactly("bond-1-000008");
        assertThat(summary.accepted()).isEqualTo(EveryKind.lines().size() - 1);
        assertThat(check.differences()).isEmpty();
    }

    /** RFC 8785 by another way: the sent text itself, put into its canonical form. */
    @Test
    void isStoredInTheCanonicalFormOfWhatWasSent() throws IOException {
        for (String line : EveryKind.lines()) {
            String sent = spacedOut(line);
            LineOutcome outcome =
                    imports.takeLine(sent, new Sender("import", "spaced")).orElseThrow();
            assertThat(stored(Objects.requireNonNull(outcome.id())))
                    .isEqualTo(new JsonCanonicalizer(sent).getEncodedString());
        }
    }

    private static String spacedOut(String line) {
        String pretty = JsonMapper.shared()
                .writerWithDefaultPrettyPrinter()
                .writeValueAsString(EveryKind.parsed(line))
                .replaceAll("\\R", " ");
        return pretty.replace("-", "\\u002d");
    }

    private String stored(String id) {
        return jdbc.sql("SELECT envelope FROM ledger.entry WHERE id = ?")
                .param(id)
                .query(String.class)
                .single();
    }
}
