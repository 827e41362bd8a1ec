package dev.sunthread.demo;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.inbox.Findings;
import dev.sunthread.inbox.Lines;
import dev.sunthread.inbox.OpenFinding;
import dev.sunthread.journal.Exports;
import dev.sunthread.journal.Restores;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.materials.Charges;
import dev.sunthread.production.Stays;
import dev.sunthread.testing.SunthreadTest;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

@SunthreadTest
class DemoPlantRestoreTests {

    @Autowired
    Restores restores;

    @Autowired
    Exports exports;

    @Autowired
    Sealer sealer;

    @Autowired
    Findings findings;

    @Autowired
    Lines lines;

    @Autowired
    Charges charges;

    @Autowired
    Stays stays;

    @Test
    void restoresWithTheFindingsOfItsStoriesOnly() throws IOException {
        String journal = DemoPlant.of(DemoPlant.FEW_TRAYS).journal();
        restores.run(new ByteArrayInputStream(journal.getBytes(StandardCharsets.UTF_8)), restored -> {});
        Map<String, Long> open = findings.open(sealer.last(), 100).stream()
                .collect(Collectors.groupingBy(OpenFinding::rule, Collectors.counting()));
        assertThat(open)
                .containsExactlyInAnyOrderEntriesOf(Map.of(
                        "unit-is-not-on-hold", 1L,
                        "demanded-cure-is-done-before-the-next-operation", 20L,
                        "earlier-operations-are-done-before-the-next", 7L,
                        "position-is-discharged-before-the-next-charge", 1L,
                        "scanned-lot-is-the-one-loaded", 1L));
        assertThat(lines.count(sealer.last())).isOne();
        assertThat(charges.differencesFromHistory()).isEmpty();
        assertThat(stays.differencesFromHistory()).isEmpty();
        ByteArrayOutputStream exported = new ByteArrayOutputStream();
        exports.write(exported);
        assertThat(exported.toString(StandardCharsets.UTF_8).equals(journal))
                .as("the export is the journal that was restored")
                .isTrue();
    }
}
