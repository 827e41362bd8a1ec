package dev.sunthread.journal;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Sealer;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Together;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Imports that run at once come to their ends, whatever they have in common. */
@SunthreadTest
class ImportsAtOnceTests {

    @Autowired
    Imports imports;

    @Autowired
    Sealer sealer;

    @Autowired
    StateCheck check;

    @Autowired
    JdbcClient jdbc;

    @Test
    void eachLineIsRecordedOrKeptOnceAndReportedToEverySender() throws Exception {
        List<String> forward = new ArrayList<>(EveryKind.lines());
        for (int i = 0; i < 20; i++) {
            forward.add(i * 2, "no envelope " + i);
        }
        List<String> backward = new ArrayList<>(forward);
        Collections.reverse(backward);
        List<List<LineOutcome>> reports = Together.atOnce(List.of(
                () -> imported(forward), () -> imported(backward), () -> imported(forward), () -> imported(backward)));
        assertThat(reports).allMatch(outcomes -> outcomes.size() == forward.size());
        imported(forward);
        assertThat(jdbc.sql("SELECT count(*) FROM ledger.entry WHERE kind <> 'kept-line' OR id = 'line-0001'")
                        .query(Integer.class)
                        .single())
                .isEqualTo(EveryKind.lines().size());
        assertThat(jdbc.sql("SELECT count(*) FROM inbox.line WHERE text LIKE 'no envelope%'")
                        .query(Integer.class)
                        .single())
                .isEqualTo(20);
        assertThat(check.differences()).isEmpty();
        assertThat(sealer.seal())
                .isEqualTo(jdbc.sql("SELECT count(*) FROM ledger.entry")
                        .query(Long.class)
                        .single());
    }

    private List<LineOutcome> imported(List<String> lines) throws Exception {
        List<LineOutcome> outcomes = new ArrayList<>();
        imports.run(Bytes.of(String.join("\n", lines)), new Sender("import", "file"), outcomes::add);
        return outcomes;
    }
}
