package dev.sunthread.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.sunthread.demo.told.JournalWriter;
import dev.sunthread.demo.told.Notebook;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.EnvelopeReader;
import java.io.IOException;
import java.time.OffsetDateTime;
import org.junit.jupiter.api.Test;

class WholeExportTests {

    private static final int ENTRIES = 4;
    private static final OffsetDateTime RECORDED_AT = OffsetDateTime.parse("2026-03-05T12:00:00.25Z");

    private final ExportLines export = new ExportLines(JournalWriter.text(EveryKind.lines().stream()
                    .limit(ENTRIES)
                    .map(line -> new Notebook.Line(RECORDED_AT, EnvelopeReader.read(line)))
                    .toList())
            .lines()
            .toList());

    @Test
    void readsAnUnchangedFileToItsEnd() throws IOException {
        assertThat(entriesOf(export)).isEqualTo(ENTRIES);
    }

    @Test
    void refusesAChangedCharacterWhereverItStands() {
        for (int i = 0; i < export.size(); i++) {
            for (int at = 0; at < export.get(i).length(); at++) {
                ExportLines changed = export.withAnotherCharacter(i, at);
                assertThatThrownBy(() -> entriesOf(changed))
                        .as(changed.get(i))
                        .isInstanceOf(Refused.class)
                        .hasMessageContainingAll("Line ", ": ");
            }
        }
    }

    private static long entriesOf(ExportLines lines) throws IOException {
        WholeExport export = new WholeExport(Bytes.of(lines.text()));
        long entries = 0;
        // only the last line proves the ones before it
        while (export.next() != null) {
            entries++;
        }
        return entries;
    }
}
