package dev.sunthread.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.sunthread.kernel.Refused;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Tables;
import dev.sunthread.testing.TestDatabase;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A whole export gives the same database again, and anything less is refused and leaves nothing. */
@SunthreadTest
class RestoreTests {

    private static final Sender SENDER = new Sender("import", "file");

    @Autowired
    Imports imports;

    @Autowired
    Exports exports;

    @Autowired
    Restores restores;

    @Autowired
    StateCheck check;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    ApplicationContext context;

    private List<String> export = List.of();

    @BeforeEach
    void exported() throws IOException {
        imports.run(EveryKind.stream(), SENDER, line -> {});
        imports.takeLine("no envelope \u0000 \ud83d\ude02", SENDER);
        export = export();
    }

    @Test
    void givesTheSameLedgerAndTheSameExportAgain() throws IOException {
        List<Map<String, Object>> ledger = ledger();
        Map<String, Long> counts = Tables.counts(jdbc);
        TestDatabase.beginAgain(context);
        assertThat(restore(export)).isEqualTo(ledger.size());
        assertThat(ledger()).isEqualTo(ledger);
        assertThat(Tables.counts(jdbc)).isEqualTo(counts);
        assertThat(export()).isEqualTo(export);
        assertThat(check.differences()).isEmpty();
    }

    @Test
    void refusesADatabaseThatHoldsRecords() {
        Map<String, Long> counts = Tables.counts(jdbc);
        assertThatThrownBy(() -> restore(export)).isInstanceOf(Refused.class).hasMessageContaining("holds records");
        assertThat(Tables.counts(jdbc)).isEqualTo(counts);
    }

    @Test
    void refusesAFileThatLacksLines() {
        TestDatabase.beginAgain(context);
        refuses("The journal has no last line", export.subList(0, export.size() - 1));
        refuses("The journal has no last line", List.of());
        refuses("Line 1:", export.subList(1, export.size()));
        refuses("Line 6:", without(5));
        refuses("Line " + (export.size() - 1) + ":", without(export.size() - 2));
        refuses("Line 4:", with(3, export.get(3).substring(0, 50)));
    }

    @Test
    void refusesAFileWithLinesInAnotherOrderOrTooMany() {
        TestDatabase.beginAgain(context);
        refuses("Line 4:", with(3, export.get(4)));
        refuses("Line 1:", with(0, export.get(1)));
        refuses("Line 5:", with(4, "{\"journal\":1}"));
        List<String> more = new ArrayList<>(export);
        more.add(export.get(1));
        refuses("Line " + more.size() + ":", more);
    }

    @Test
    void refusesAChangedCharacterWhereverItStands() {
        TestDatabase.beginAgain(context);
        for (int i = 0; i < export.size(); i++) {
            String line = export.get(i);
            for (int at = i % 7; at < line.length(); at += 29) {
                char other = line.charAt(at) == '7' ? '8' : '7';
                refuses("Line ", with(i, line.substring(0, at) + other + line.substring(at + 1)));
            }
        }
    }

    @Test
    void comesToTheSameByImportWithItsOwnTimesAndOnlyOnce() throws IOException {
        Map<String, Long> counts = Tables.counts(jdbc);
        TestDatabase.beginAgain(context);
        ImportSummary first = importAll();
        assertThat(first.accepted() + first.acceptedWithFinding()).isEqualTo(export.size() - 2);
        Map<String, Long> imported = Tables.counts(jdbc);
        export();
        assertThat(Tables.counts(jdbc)).isEqualTo(counts);
        assertThat(importAll()).isEqualTo(new ImportSummary(0, 0, export.size() - 2, 0));
        assertThat(imported.get("ledger.entry")).isEqualTo(Tables.counts(jdbc).get("ledger.entry"));
        assertThat(jdbc.sql("SELECT count(*) FROM ledger.entry WHERE recorded_at > now() - interval '1 minute'")
                        .query(Long.class)
                        .single())
                .isEqualTo(export.size() - 2);
    }

    private void refuses(String message, List<String> lines) {
        assertThatThrownBy(() -> restore(lines)).isInstanceOf(Refused.class).hasMessageStartingWith(message);
        assertThat(Tables.counts(jdbc).values()).allMatch(count -> count == 0);
    }

    private List<String> without(int line) {
        List<String> lines = new ArrayList<>(export);
        lines.remove(line);
        return lines;
    }

    private List<String> with(int line, String changed) {
        List<String> lines = new ArrayList<>(export);
        lines.set(line, changed);
        return lines;
    }

    private long restore(List<String> lines) throws IOException {
        return restores.run(Bytes.of(String.join("\n", lines)), count -> {});
    }

    private ImportSummary importAll() throws IOException {
        return imports.run(Bytes.of(String.join("\n", export)), SENDER, line -> {});
    }

    private List<String> export() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        exports.write(out);
        return out.toString(StandardCharsets.UTF_8).lines().toList();
    }

    private List<Map<String, Object>> ledger() {
        return jdbc.sql("""
                        SELECT p.position, e.id, e.actor, e.recorded_at, encode(e.hash, 'hex') AS hash, e.envelope
                        FROM ledger.entry e JOIN ledger.position p ON p.entry = e.number ORDER BY p.position
                        """).query().listOfRows();
    }
}
