package dev.sunthread.journal;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.journal.LineOutcome.Outcome;
import dev.sunthread.testing.SunthreadTest;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What becomes of the lines of an import. */
@SunthreadTest
class ImportsTests {

    private static final String ITEM = """
            {"id":"i-1","kind":"item","version":1,"occurredAt":"2026-03-01T00:00:00Z","actor":"a","source":"s",\
            "body":{"item":"ADH","revision":"A","name":"adhesive","tracking":"lot","unitOfMeasure":"g"}}""";

    private static final String RECEIPT = """
            {"id":"r-1","kind":"receipt","version":1,"occurredAt":"2026-03-01T08:00:00Z","actor":"a","source":"s",\
            "body":{"lot":"L-1","item":"%s","quantity":"5","unitOfMeasure":"g"}}""";

    @Autowired
    Imports imports;

    @Autowired
    JdbcClient jdbc;

    @Test
    void keepsWhatItCantIdentifyAndAcceptsTheRestOfTheBatch() throws IOException {
        List<LineOutcome> outcomes =
                run("{\"journal\":1}", RECEIPT.formatted("ADX"), ITEM, "no json", RECEIPT.formatted("ADH"), ITEM);
        assertThat(outcomes)
                .extracting(LineOutcome::outcome)
                .containsExactly(
                        Outcome.KEPT_IN_INBOX,
                        Outcome.ACCEPTED,
                        Outcome.KEPT_IN_INBOX,
                        Outcome.ACCEPTED,
                        Outcome.KNOWN_BEFORE);
        assertThat(outcomes.get(0).problems().get(0).toString())
                .isEqualTo("body.item: names item \"ADX\", which is not released."
                        + " Release the item first or correct its number.");
        assertThat(jdbc.sql("SELECT count(*) FROM materials.receipt")
                        .query(Long.class)
                        .single())
                .isEqualTo(1);
    }

    private List<LineOutcome> run(String... lines) throws IOException {
        List<LineOutcome> outcomes = new ArrayList<>();
        byte[] journal = String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
        imports.run(new ByteArrayInputStream(journal), new Sender("tester", "test"), outcomes::add);
        return outcomes;
    }
}
