package dev.sunthread.station;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Door;
import dev.sunthread.scan.label.LabelCode;
import dev.sunthread.station.Verdict.Outcome;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

@SunthreadTest
class BenchTests {

    private static final String OPERATOR = "op-01";

    @Autowired
    Door door;

    @Autowired
    Bench bench;

    @Autowired
    AtWorks atWork;

    @Autowired
    JdbcClient jdbc;

    private ShopFloor floor;
    private int scans;

    @BeforeEach
    void release() {
        floor = ShopFloor.released(door);
    }

    private Verdict scan(String station, String text) {
        return scan(station, text, false);
    }

    private Verdict scan(String station, String text, boolean kept) {
        scans++;
        Scan scan = new Scan("scan-" + scans, text, Plant.at("%02d:%02d".formatted(9 + scans / 60, scans % 60)), kept);
        return bench.scan(station, OPERATOR, scan);
    }

    private void scanAll(String station, String... texts) {
        for (String text : texts) {
            assertThat(scan(station, text)).extracting(Verdict::outcome).isEqualTo(Outcome.ACCEPTED);
        }
    }

    private List<String> kinds() {
        return jdbc.sql("SELECT kind FROM ledger.entry WHERE source <> 'test' AND id LIKE 'scan-%' ORDER BY number")
                .query(String.class)
                .list();
    }

    private void bonded(String... serials) {
        scanAll("GLUE", "A-1", "V1");
        for (String serial : serials) {
            scanAll("GLUE", serial, "C-1");
        }
    }

    @Test
    void aNewReceiverGetsItsSerialAndIsBondedOnceItsMaterialIsThere() {
        scanAll("GLUE", "A-1", "V1", "R0001");
        assertThat(atWork.at("GLUE", OPERATOR).next()).extracting(Say::key).containsExactly("next.use");
        assertThat(scan("GLUE", "C-1").said()).isEqualTo(Say.of("unit.done", "bond", "R0001"));
        assertThat(kinds()).containsExactly("charge", "birth", "step");
        assertThat(jdbc.sql("SELECT count(*) FROM production.step_use WHERE position IS NOT NULL AND lot IS NULL")
                        .query(Integer.class)
                        .single())
                .isEqualTo(1);
    }

    @Test
    void aWallAsksForEachOfItsReceiversAndIsFastenedWithTheLast() {
        bonded("R0001", "R0002");
        floor.plant().birth("08:00", "WAL", "W0001");
        bake("R0001", "R0002");
        scanAll("FLOOR", "W0001", "N-1", "R0001");
        assertThat(atWork.at("FLOOR", OPERATOR).next().get(0).with()).startsWith("P2", "REC");
        assertThat(scan("FLOOR", "R0002").said()).isEqualTo(Say.of("unit.done", "fasten", "W0001"));
        assertThat(kinds()).endsWith("installation", "installation", "step");
    }

    private void bake(String... units) {
        scanAll("HEAT", "OVEN-7");
        scanAll("HEAT", units);
        scanAll("HEAT", "OVEN-7", ".end");
    }

    @Test
    void aReceiverThatWasNotBakedIsRefusedWithTheReasonAndNothingIsRecorded() {
        bonded("R0001");
        floor.plant().birth("08:00", "WAL", "W0001");
        scanAll("FLOOR", "W0001", "N-1");
        int before = kinds().size();
        Verdict refused = scan("FLOOR", "R0001");
        assertThat(refused.outcome()).isEqualTo(Outcome.REFUSED);
        assertThat(refused.said().with().get(0)).contains("BAKE");
        assertThat(kinds()).hasSize(before);
    }

    @Test
    void aLotOnHoldIsRefusedAndTheUnitStaysInHand() {
        scanAll("GLUE", "A-1", "V1", "R0001");
        floor.hold("08:30", "C-1");
        Verdict refused = scan("GLUE", "C-1");
        assertThat(refused.outcome()).isEqualTo(Outcome.REFUSED);
        assertThat(refused.said().with().get(0)).contains("C-1 is on hold: Supplier's notice");
        assertThat(kinds()).containsExactly("charge", "birth");
        assertThat(atWork.at("GLUE", OPERATOR).units()).containsExactly("R0001");
    }

    @Test
    void theSameScanSentTwiceDoesNothingAndGetsTheSameWord() {
        Scan scan = new Scan("once", "A-1", Plant.at("09:00"), false);
        Verdict first = bench.scan("GLUE", OPERATOR, scan);
        assertThat(bench.scan("GLUE", OPERATOR, scan)).isEqualTo(first);
        assertThat(jdbc.sql("SELECT count(*) FROM station.scan WHERE id = 'once'")
                        .query(Integer.class)
                        .single())
                .isEqualTo(1);
    }

    @Test
    void undoVoidsWhatTheLastScanRecordedAndPutsTheUnitBackInHand() {
        bonded("R0001");
        assertThat(scan("GLUE", ".undo").said().key()).isEqualTo("undo.done");
        assertThat(kinds()).endsWith("step", "void");
        assertThat(atWork.at("GLUE", OPERATOR).units()).containsExactly("R0001");
        assertThat(scan("GLUE", ".undo").said().key()).isEqualTo("undo.nothing");
    }

    @Test
    void anotherContainerReplacesWhatIsLoaded() {
        scanAll("GLUE", "A-1", "V1", "A-2");
        assertThat(scan("GLUE", "V1").said()).isEqualTo(Say.of("material.replaced", "A-2", "V1", "A-1"));
        assertThat(kinds()).containsExactly("charge", "discharge", "charge");
    }

    @Test
    void whatIsLoadedAndComesUnderHoldStopsTheStationUntilItIsScannedOff() {
        scanAll("GLUE", "A-1", "V1");
        floor.hold("08:30", "A-1");
        assertThat(atWork.at("GLUE", OPERATOR).stops())
                .extracting(Remaining::position)
                .containsExactly("V1");
        assertThat(scan("GLUE", "V1").said().key()).isEqualTo("material.off-to-hold");
        assertThat(atWork.at("GLUE", OPERATOR).stops()).isEmpty();
    }

    @Test
    void aKeptScanIsRecordedWithAFindingWhateverRuleItBreaks() {
        scanAll("GLUE", "A-1", "V1", "R0001");
        floor.hold("08:30", "C-1");
        Verdict noted = scan("GLUE", "C-1", true);
        assertThat(noted.outcome()).isEqualTo(Outcome.NOTED);
        assertThat(kinds()).endsWith("step");
    }

    @Test
    void aKeptScanThatCannotBeUnderstoodWaitsInTheInboxUnderAllItMayName() {
        scanAll("GLUE", "A-1", "V1", "R0001");
        assertThat(scan("GLUE", "C-l", true).said().key()).isEqualTo("kept.in-inbox");
        assertThat(jdbc.sql("SELECT name FROM inbox.line_name ORDER BY ordinal")
                        .query(String.class)
                        .list())
                .contains("C-l", "R0001");
    }

    @Test
    void aNameOfTwoThingsIsAskedAboutAndAPointAndADigitChoose() {
        floor.plant().receipt("07:00", "R0009", "CELL");
        floor.plant().birth("08:00", "REC", "R0009");
        Verdict asked = scan("GLUE", "R0009");
        assertThat(asked.outcome()).isEqualTo(Outcome.ASKED);
        assertThat(asked.choices())
                .extracting(choice -> choice.said().key())
                .containsExactly("which.unit", "which.lot");
        assertThat(scan("GLUE", ".1").said().key()).isEqualTo("unit.in-hand");
    }

    @Test
    void aTrayIsLoadedUnitByUnitAndBakedAsOne() {
        bonded("R0001", "R0002");
        scanAll("GLUE", LabelCode.carrier("TRAY-1"), "R0001", "R0002", ".done");
        scanAll("HEAT", "OVEN-7", "TRAY-1", "OVEN-7", "OVEN-7");
        assertThat(kinds()).endsWith("carrier-load", "carrier-load", "cure-run");
    }

    @Test
    void whatComesToLightWhileARunIsOnIsNotedAndNotRefused() {
        bonded("R0001");
        scanAll("HEAT", "OVEN-7", "R0001", "OVEN-7");
        int before = kinds().size();
        floor.plant().holdUnit("09:00", "REC R0001", "scratched");
        Verdict over = scan("HEAT", "OVEN-7");
        assertThat(over.outcome()).isEqualTo(Outcome.NOTED);
        assertThat(over.remedy())
                .isEqualTo(Say.of("noted", "Unit REC R0001 is on hold: scratched", "unit-is-not-on-hold"));
        assertThat(kinds().subList(before, before + 1)).containsExactly("cure-run");
    }

    @Test
    void aUnitOnHoldDoesNotGoIntoALoad() {
        bonded("R0001");
        floor.plant().holdUnit("09:00", "REC R0001", "scratched");
        scanAll("HEAT", "OVEN-7");
        assertThat(scan("HEAT", "R0001").said())
                .isEqualTo(Say.of("said", "Unit REC R0001 is on hold: scratched", "unit-is-not-on-hold"));
        assertThat(atWork.at("HEAT", OPERATOR).inHand().key()).isEqualTo("hand.load");
    }

    @Test
    void aUnitGoesToTheFirstFreePositionOfATray() {
        bonded("R0001", "R0002", "R0003");
        scanAll("GLUE", LabelCode.carrier("TRAY-1"), "R0001", "R0002", ".done");
        floor.plant()
                .say(
                        "carrier-unload",
                        "09:59",
                        Map.of("carrier", "TRAY-1", "unloads", List.of(Map.of("unit", Plant.unit("REC R0001")))));
        scans = 60;
        scanAll("GLUE", LabelCode.carrier("TRAY-1"));
        assertThat(scan("GLUE", "R0003").said()).isEqualTo(Say.of("carrier.loaded", "R0003", "TRAY-1", "1"));
    }

    @Test
    void aUnitThatMayNotLeaveIsRefusedWhenItIsScanned() {
        floor.plant().birth("08:00", "WAL", "W0001");
        scanAll("PACKER", ".ship", "Thornfield Array");
        Verdict refused = scan("PACKER", "W0001");
        assertThat(refused.outcome()).isEqualTo(Outcome.REFUSED);
        assertThat(refused.said().with().get(0)).contains("W0001 has no record of fasten");
        assertThat(atWork.at("PACKER", OPERATOR).units()).isEmpty();
    }

    @Test
    void whatIsUnknownIsRefusedAndTheWorkStays() {
        scanAll("GLUE", "A-1", "V1", "R0001");
        assertThat(scan("GLUE", "???").said().key()).isEqualTo("unknown");
        assertThat(atWork.at("GLUE", OPERATOR).units()).containsExactly("R0001");
    }

    @Test
    void aCharacterThatCanNotBeKeptIsShownByASignAndTheScanGoesOn() {
        assertThat(scan("GLUE", "R0001\0").outcome()).isEqualTo(Outcome.REFUSED);
        assertThat(scan("GLUE", "R0001\0", true).outcome()).isEqualTo(Outcome.NOTED);
        assertThat(jdbc.sql("SELECT text FROM inbox.line").query(String.class).list())
                .containsExactly("R0001\u2400");
    }
}
