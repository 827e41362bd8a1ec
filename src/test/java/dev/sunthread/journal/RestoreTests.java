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
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
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

    private ExportLines export = new ExportLines(List.of());

    @BeforeEach
    void exported() throws IOException {
        imports.run(EveryKind.stream(), SENDER, line -> {});
        imports.takeLine("no envelope \u0000 \ud83d\ude02", SENDER);
        export = export();
    }

    @Test
    void givesTheSameLedgerAndTheSameExportAgain() throws IOException {
        List<Map<String, @Nullable Object>> ledger = ledger();
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
        refuses("The journal has no last line", export.without(export.size() - 1));
        refuses("The journal has no last line", new ExportLines(List.of()));
        refuses("Line 1:", export.without(0));
        refuses("Line 6:", export.without(5));
        refuses("Line " + (export.size() - 1) + ":", export.without(export.size() - 2));
        refuses("Line 4:", export.with(3, export.get(3).substring(0, 50)));
    }

    @Test
    void refusesAFileWithLinesInAnotherOrderOrTooMany() {
        TestDatabase.beginAgain(context);
        refuses("Line 4:", export.with(3, export.get(4)));
        refuses("Line 1:", export.with(0, export.get(1)));
        refuses("Line 5:", export.with(4, "{\"journal\":1}"));
        String last = export.get(export.size() - 1);
        refuses("Line " + (export.size() + 1) + ":", export.with(export.size() - 1, last + "\n" + export.get(1)));
    }

    @Test
    void leavesNothingOfAFileInWhichACharacterChanged() {
        TestDatabase.beginAgain(context);
        int last = export.size() - 1;
        refuses("Line 4:", export.withAnotherCharacter(3, 20));
        refuses("Line " + last + ":", export.withAnotherCharacter(last - 1, 20));
        refuses("Line " + (last + 1) + ":", export.withAnotherCharacter(last, 30));
        int recordedAt = export.get(3).indexOf("recordedAt") + 16;
        refuses("Line " + (last + 1) + ": its hash", export.withAnotherCharacter(3, recordedAt));
    }

    private void refuses(String message, ExportLines lines) {
        assertThatThrownBy(() -> restore(lines)).isInstanceOf(Refused.class).hasMessageStartingWith(message);
        assertThat(Tables.counts(jdbc).values()).allMatch(count -> count == 0);
    }

    private long restore(ExportLines lines) throws IOException {
        return restores.run(Bytes.of(lines.text()), count -> {});
    }

    private ExportLines export() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        exports.write(out);
        return new ExportLines(out.toString(StandardCharsets.UTF_8).lines().toList());
    }

    private List<Map<String, @Nullable Object>> ledger() {
        return jdbc.sql("""
                        SELECT p.position, e.id, e.actor, e.recorded_at, e.recorded_by, encode(e.hash, 'hex') AS hash, e.envelope
                        FROM ledger.entry e JOIN ledger.position p ON p.entry = e.number ORDER BY p.position
                        """).query().listOfRows();
    }
}
