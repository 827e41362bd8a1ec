package dev.sunthread.genealogy;

import static dev.sunthread.genealogy.Certainty.CERTAIN;
import static dev.sunthread.genealogy.Certainty.UNPROVEN;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.journal.ImportSummary;
import dev.sunthread.journal.Imports;
import dev.sunthread.journal.Sender;
import dev.sunthread.testing.SunthreadTest;
import java.io.IOException;
import java.io.InputStream;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.core.io.ClassPathResource;

/** A telescope's mirror, of other levels and operations, is traced from its journal alone: nothing of a line is code. */
@SunthreadTest
class SecondProductTests {

    @Autowired
    Imports imports;

    @Autowired
    Traces traces;

    private Asked asked;

    @BeforeEach
    void imported() throws IOException {
        try (InputStream journal = new ClassPathResource("journal/telescope-mirror.ndjson").getInputStream()) {
            ImportSummary summary = imports.run(journal, new Sender("import", "telescope-mirror.ndjson"), line -> {});
            assertThat(summary).isEqualTo(new ImportSummary(35, 0, 0, 0));
        }
        asked = new Asked(traces);
    }

    @Test
    void followsAGlassLotThroughSegmentAndCellToTheRing() {
        assertThat(asked.lot("GL-1").ever()).isEqualTo(Map.of("S1", CERTAIN, "C1", CERTAIN, "M1", CERTAIN));
        assertThat(asked.lot("GL-1").line("S1").level()).isEqualTo("segment");
        assertThat(asked.lot("GL-1").line("M1").level()).isEqualTo("ring");
        assertThat(asked.lot("GL-1").line("M1").shipments())
                .containsExactly("SH-1 to North Dome on 2026-05-09, certain then");
    }

    @Test
    void tellsWhatWasSwappedOutBeforeShipment() {
        assertThat(asked.unit("RING", "M1").ever()).containsEntry("S2", CERTAIN).containsEntry("AG-2", CERTAIN);
        assertThat(asked.unit("RING", "M1").atShipment())
                .doesNotContainKey("S2")
                .containsEntry("S3", CERTAIN);
        assertThat(asked.lot("GL-2").now()).containsEntry("S2", CERTAIN).containsEntry("C2", CERTAIN);
    }

    @Test
    void tellsTheSilverLotFromWhatWasLoaded() {
        assertThat(asked.lot("AG-1").ever()).isEqualTo(Map.of("S1", CERTAIN, "C1", CERTAIN, "M1", CERTAIN));
        assertThat(asked.lot("AG-2").ever().keySet()).containsExactly("C2", "M1", "S2", "S3");
    }

    @Test
    void followsBothReceiptsOfOneSupplierLot() {
        assertThat(asked.supplierLot("MELT-9").ever().keySet()).contains("S1", "S2", "S3", "C1", "C2", "M1");
        // a pad of C2 was demanded and not recorded
        assertThat(asked.lot("PD-1").ever()).isEqualTo(Map.of("C1", CERTAIN, "M1", CERTAIN, "C2", UNPROVEN));
    }
}
