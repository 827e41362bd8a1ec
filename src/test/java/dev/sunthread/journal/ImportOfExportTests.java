package dev.sunthread.journal;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Tables;
import dev.sunthread.testing.TestDatabase;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** An export can also be told to another plant, as any journal can. */
@SunthreadTest
class ImportOfExportTests {

    @Autowired
    Imports imports;

    @Autowired
    Exports exports;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    ApplicationContext context;

    @Test
    void comesToTheSameWithTimesOfItsOwnAndOnlyOnce() throws IOException {
        imported(EveryKind.stream().readAllBytes());
        byte[] export = export();
        Map<String, Long> counts = Tables.counts(jdbc);
        int said = EveryKind.lines().size();
        TestDatabase.beginAgain(context);
        assertThat(imported(export)).isEqualTo(new ImportSummary(said - 1, 1, 0, 0));
        assertThat(imported(export)).isEqualTo(new ImportSummary(0, 0, said, 0));
        assertThat(jdbc.sql("SELECT count(*) FROM ledger.entry WHERE recorded_at > now() - interval '1 minute'")
                        .query(Integer.class)
                        .single())
                .isEqualTo(said);
        export();
        assertThat(Tables.counts(jdbc)).isEqualTo(counts);
    }

    @Test
    void keepsALineThatWasChangedAfterItsExport() throws IOException {
        imported(EveryKind.stream().readAllBytes());
        String line = new String(export(), StandardCharsets.UTF_8)
                .lines()
                .skip(1)
                .findFirst()
                .orElseThrow();
        TestDatabase.beginAgain(context);
        LineOutcome outcome = imports.takeLine(line.replace("adhesive", "Adhesive"), new Sender("import", "file"))
                .orElseThrow();
        assertThat(outcome.problems()).extracting(problem -> problem.field()).containsExactly("hash");
    }

    private ImportSummary imported(byte[] journal) throws IOException {
        return imports.run(new ByteArrayInputStream(journal), new Sender("import", "file"), line -> {});
    }

    private byte[] export() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        exports.write(out);
        return out.toByteArray();
    }
}
