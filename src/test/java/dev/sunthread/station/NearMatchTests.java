package dev.sunthread.station;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.kernel.UnitId;
import dev.sunthread.ledger.Door;
import dev.sunthread.scan.label.LabelCode;
import dev.sunthread.station.Verdict.Outcome;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** A label that names nothing, or a serial that would be new, and looks like something known is asked about. */
@SunthreadTest
class NearMatchTests {

    @Autowired
    Door door;

    @Autowired
    Bench bench;

    @Autowired
    JdbcClient jdbc;

    private ShopFloor floor;
    private int scans;

    @BeforeEach
    void release() {
        floor = ShopFloor.released(door);
    }

    private Verdict scan(String text) {
        return scan(text, false);
    }

    private Verdict scan(String text, boolean kept) {
        Scan scan = new Scan("scan-" + ++scans, text, Plant.at("09:%02d".formatted(scans)), kept);
        return bench.scan("GLUE", "op-01", scan);
    }

    private List<String> recorded(String sql) {
        return jdbc.sql(sql).query(String.class).list();
    }

    @Test
    void aLotThatIsReadWronglyIsOfferedAndTheChoiceIsRecorded() {
        Verdict asked = scan("a-O1");
        assertThat(asked.outcome()).isEqualTo(Outcome.ASKED);
        assertThat(asked.said()).isEqualTo(Say.of("near", "a-O1"));
        assertThat(asked.choices()).extracting(Verdict.Choice::said).containsExactly(Say.of("which.lot", "A-1"));
        assertThat(recorded("SELECT id FROM ledger.entry WHERE id LIKE 'scan-%'"))
                .isEmpty();
        assertThat(scan(".1").said()).isEqualTo(Say.of("material.which-position", "A-1"));
        assertThat(recorded("SELECT scanned || ' ' || what || ' ' || name FROM scan.choice"))
                .containsExactly("a-O1 LOT A-1");
        assertThat(scan("v1").choices())
                .extracting(Verdict.Choice::said)
                .containsExactly(Say.of("which.position", "V1"));
        assertThat(scan(".1").said()).isEqualTo(Say.of("material.loaded", "A-1", "V1"));
        assertThat(recorded("SELECT name FROM scan.choice WHERE what = 'POSITION'"))
                .containsExactly("GLUE V1");
    }

    @Test
    void aUnitWithoutItsLeadingNoughtsIsOffered() {
        floor.plant().birth("08:00", "REC", "R0012");
        Verdict asked = scan("R12");
        assertThat(asked.choices())
                .extracting(Verdict.Choice::said)
                .containsExactly(Say.of("which.unit", "R0012", "REC"));
        assertThat(scan(".1").said()).isEqualTo(Say.of("unit.in-hand", "R0012", "bond"));
        assertThat(recorded("SELECT item || ' ' || name FROM scan.choice")).containsExactly("REC R0012");
    }

    @Test
    void aNewSerialThatLooksLikeAKnownOneIsAskedAboutBeforeItIsBorn() {
        floor.plant().birth("08:00", "REC", "ROO12");
        Verdict asked = scan("R0012");
        assertThat(asked.said()).isEqualTo(Say.of("near.new", "R0012"));
        assertThat(asked.choices())
                .extracting(Verdict.Choice::said)
                .containsExactly(Say.of("which.unit", "ROO12", "REC"), Say.of("near.new-unit", "R0012", "REC"));
        assertThat(recorded("SELECT kind FROM ledger.entry WHERE id LIKE 'scan-%'"))
                .isEmpty();
        assertThat(scan(".2").said()).isEqualTo(Say.of("unit.in-hand", "R0012", "bond"));
        assertThat(recorded("SELECT kind FROM ledger.entry WHERE id LIKE 'scan-%' ORDER BY number"))
                .containsExactly("birth", "scan-choice");
    }

    @Test
    void aSerialThatLooksLikeNoneOfItsItemIsAskedAboutBeforeItIsBorn() {
        String label = LabelCode.unit(UnitId.of(null, "REC", "RÜ012"));
        Verdict asked = scan(label);
        assertThat(asked.said()).isEqualTo(Say.of("near.unlike", "RÜ012", "REC", "R####"));
        assertThat(asked.choices())
                .extracting(Verdict.Choice::said)
                .containsExactly(Say.of("near.new-unit", "RÜ012", "REC"));
        assertThat(recorded("SELECT kind FROM ledger.entry WHERE id LIKE 'scan-%'"))
                .isEmpty();
        assertThat(scan(".1").said()).isEqualTo(Say.of("unit.in-hand", "RÜ012", "bond"));
        assertThat(recorded("SELECT kind FROM ledger.entry WHERE id LIKE 'scan-%' ORDER BY number"))
                .containsExactly("birth", "scan-choice");
    }

    @Test
    void theKnownUnitIsTakenInsteadIfThatWasMeant() {
        floor.plant().birth("08:00", "REC", "ROO12");
        scan("R0012");
        assertThat(scan(".1").said()).isEqualTo(Say.of("unit.in-hand", "ROO12", "bond"));
        assertThat(recorded("SELECT kind FROM ledger.entry WHERE id LIKE 'scan-%'"))
                .containsExactly("scan-choice");
    }

    @Test
    void serialsThatFollowEachOtherAreNotAskedAbout() {
        floor.plant().birth("08:00", "REC", "R0011", "R0110", "R1100", "R0101");
        for (String serial : List.of("R1001", "R0001", "R1010", "R0010", "R1011")) {
            assertThat(scan(serial).said()).isEqualTo(Say.of("unit.in-hand", serial, "bond"));
            scan(".cancel");
        }
    }

    @Test
    void aChoiceThatARuleRefusesIsNotRecorded() {
        floor.hold("08:30", "A-1");
        scan("V1");
        scan("a-1");
        assertThat(scan(".1").outcome()).isEqualTo(Outcome.REFUSED);
        assertThat(recorded("SELECT scanned FROM scan.choice")).isEmpty();
    }

    @Test
    void aKeptScanIsNeverFoldedButWaitsInTheInbox() {
        assertThat(scan("a-1", true).said().key()).isEqualTo("kept.in-inbox");
        assertThat(recorded("SELECT name FROM inbox.line_name")).contains("a-1").doesNotContain("A-1");
    }

    @Test
    void aConsigneeIsTakenAsItIsWritten() {
        scan(".ship");
        assertThat(scan("a-1").said()).isEqualTo(Say.of("ship.to", "a-1"));
    }

    @Test
    void undoingTakesTheChoiceBackToo() {
        floor.plant().birth("08:00", "REC", "R0012");
        scan("r0012");
        scan(".1");
        assertThat(scan(".undo").said().key()).isEqualTo("undo.done");
        assertThat(recorded("SELECT kind FROM ledger.entry WHERE id LIKE 'scan-%' ORDER BY number"))
                .containsExactly("scan-choice", "void");
    }
}
