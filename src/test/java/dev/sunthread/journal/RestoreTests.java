package dev.sunthread.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import dev.sunthread.access.Role;
import dev.sunthread.kernel.Refused;
import dev.sunthread.testing.SignedInPerson;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Tables;
import dev.sunthread.testing.TestDatabase;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;

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

    @Autowired
    MockMvc pages;

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

    @Test
    void refusesTwoLinesThatChangedPlaces() {
        TestDatabase.beginAgain(context);
        String second = export.get(2).replace("\"position\":2,", "\"position\":1,");
        String first = export.get(1).replace("\"position\":1,", "\"position\":2,");
        ExportLines swapped = rehashed(export.with(1, second).with(2, first));
        refuses("Line " + swapped.size() + ": its head is not that of the entries before it", swapped);
    }

    /** The lines with the hash over all of them computed anew. */
    private static ExportLines rehashed(ExportLines lines) {
        int last = lines.size() - 1;
        String before = String.join("\n", lines.lines().subList(0, last)) + "\n";
        String digest =
                HexFormat.of().formatHex(RawLine.sha256Digest().digest(before.getBytes(StandardCharsets.UTF_8)));
        return lines.with(
                last, lines.get(last).replaceFirst("\"digest\":\"[0-9a-f]+\"", "\"digest\":\"" + digest + "\""));
    }

    @Test
    void saysThatANewerVersionWroteIt() {
        TestDatabase.beginAgain(context);
        refusesWith(
                "Line 1: journal: is version 2, which a newer program wrote",
                "Restore it with the version that wrote it",
                export.with(0, "{\"journal\":2}"));
        int birth = IntStream.range(0, export.size())
                .filter(line -> export.get(line).contains("\"kind\":\"birth\""))
                .findFirst()
                .orElseThrow();
        String newer =
                export.get(birth).replace("\"version\":1", "\"version\":9").replaceFirst(",\"hash\":\"[0-9a-f]+\"", "");
        refusesWith(
                "Line " + (birth + 1) + ":", "Restore it with the version that wrote it", export.with(birth, newer));
    }

    @Test
    void saysWhichLineAPackedExportIsCutBehind() throws IOException {
        TestDatabase.beginAgain(context);
        byte[] packed = SentFileTests.packed(export.text());
        assertThatThrownBy(() -> restores.run(
                        SentFile.text(new ByteArrayInputStream(packed, 0, packed.length / 2)), count -> {}))
                .isInstanceOf(Refused.class)
                .hasMessageMatching("The packed file is cut or damaged behind line \\d+");
    }

    @Test
    void saysThatItRunsAndRefusesASecondOne() throws Exception {
        TestDatabase.beginAgain(context);
        assertThat(restores.running()).isNull();
        InputStream lines = new FilterInputStream(Bytes.of(export.text())) {
            @Override
            public int read(byte[] into, int from, int count) throws IOException {
                assertThat(restores.running()).isNotNull();
                assertThatThrownBy(() -> restores.run(Bytes.of(""), more -> {})).hasMessage("A restore runs already");
                try {
                    assertThat(pages.perform(
                                            get("/journal").with(authentication(SignedInPerson.of(Role.ADMINISTRATOR))))
                                    .andReturn()
                                    .getResponse()
                                    .getContentAsString())
                            .contains("A restore runs: ");
                } catch (Exception e) {
                    throw new IOException(e);
                }
                return super.read(into, from, count);
            }
        };
        assertThat(restores.run(lines, count -> {})).isPositive();
        assertThat(restores.running()).isNull();
    }

    private void refusesWith(String message, String remedy, ExportLines lines) {
        assertThatThrownBy(() -> restore(lines))
                .isInstanceOfSatisfying(
                        Refused.class, refused -> assertThat(refused.remedy()).startsWith(remedy))
                .hasMessageStartingWith(message);
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
