package dev.sunthread.station;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Door;
import dev.sunthread.station.Verdict.Outcome;
import dev.sunthread.station.label.Command;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Material is loaded by its label and that of a position, one grammar at every station, and by nothing less. */
@SunthreadTest
class LoadingTests {

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

    /** A scan so many seconds after nine. */
    private Verdict at(double seconds, String station, String text) {
        return at(seconds, station, text, false);
    }

    private Verdict at(double seconds, String station, String text, boolean kept) {
        var at = Plant.at("09:00").plusNanos((long) (seconds * 1_000_000_000));
        return bench.scan(station, OPERATOR, new Scan("scan-" + ++scans, text, at, kept));
    }

    private List<String> charges() {
        return jdbc.sql("""
                        SELECT p.code || ' ' || l.number FROM materials.loaded d
                        JOIN catalog.position p ON p.id = d.position JOIN materials.lot l ON l.id = d.lot
                        WHERE upper_inf(d.during) ORDER BY 1
                        """).query(String.class).list();
    }

    private int entries() {
        return jdbc.sql("SELECT count(*) FROM ledger.entry")
                .query(Integer.class)
                .single();
    }

    @Test
    void materialAloneNeverLoadsAlsoWhereThereIsOnePosition() {
        Verdict which = at(0, "COATER", "K-1");
        assertThat(which.outcome()).isEqualTo(Outcome.ACCEPTED);
        assertThat(which.said()).isEqualTo(Say.of("material.which-position", "K-1"));
        assertThat(which.choices()).extracting(Verdict.Choice::said).containsExactly(Say.of("which.position", "POT"));
        assertThat(charges()).isEmpty();
        assertThat(at(5, "COATER", ".1").said()).isEqualTo(Say.of("material.loaded", "K-1", "POT"));
        assertThat(charges()).containsExactly("POT K-1");
    }

    @Test
    void aPositionAndThenMaterialLoadsInTheSameWayEverywhere() {
        assertThat(at(0, "COATER", "POT").said()).isEqualTo(Say.of("position.empty", "POT"));
        assertThat(at(5, "COATER", "K-1").said()).isEqualTo(Say.of("material.loaded", "K-1", "POT"));
        assertThat(at(10, "GLUE", "V2").said()).isEqualTo(Say.of("position.empty", "V2"));
        assertThat(at(15, "GLUE", "A-1").said()).isEqualTo(Say.of("material.loaded", "A-1", "V2"));
    }

    @Test
    void aLotThatNoPositionHereTakesIsRefusedAtOnceAndWhatIsLoadedStays() {
        floor.takes("COATER", "POT", "CC");
        at(0, "COATER", "POT");
        at(5, "COATER", "K-1");
        Verdict refused = at(10, "COATER", "A-1");
        assertThat(refused.outcome()).isEqualTo(Outcome.REFUSED);
        assertThat(refused.said()).isEqualTo(Say.of("material.not-taken", "A-1", "TIM", "COATER"));
        assertThat(charges()).containsExactly("POT K-1");
        assertThat(atWork.at("COATER", OPERATOR).inHand()).isEqualTo(Say.of("hand.nothing"));
    }

    @Test
    void aPositionRefusesALotOfAnotherItemAndKeepsWhatIsLoaded() {
        floor.takes("GLUE", "V1", "TIM");
        at(0, "GLUE", "V1");
        at(5, "GLUE", "A-1");
        at(10, "GLUE", "V1");
        Verdict refused = at(15, "GLUE", "C-1");
        assertThat(refused.outcome()).isEqualTo(Outcome.REFUSED);
        assertThat(refused.said().rule()).isEqualTo("only-what-the-position-takes-is-loaded");
        assertThat(charges()).containsExactly("V1 A-1");
        assertThat(at(20, "GLUE", "A-2").said()).isEqualTo(Say.of("material.replaced", "A-2", "V1", "A-1"));
    }

    @Test
    void onlyPositionsThatTakeItAreAskedFor() {
        floor.takes("GLUE", "V1", "TIM");
        assertThat(at(0, "GLUE", "C-1").choices()).hasSize(1);
        assertThat(atWork.at("GLUE", OPERATOR).next()).containsExactly(Say.of("next.position", "V2"));
        at(5, "GLUE", ".cancel");
        at(10, "GLUE", "V1");
        assertThat(atWork.at("GLUE", OPERATOR).next()).contains(Say.of("next.material", "TIM"));
        at(15, "GLUE", ".cancel");
        at(20, "GLUE", "V2");
        assertThat(atWork.at("GLUE", OPERATOR).next()).contains(Say.of("next.material-any"));
    }

    @Test
    void aKeptScanOfALotThatThePositionDoesNotTakeIsRecordedWithAFinding() {
        floor.takes("GLUE", "V1", "TIM");
        at(0, "GLUE", "C-1", true);
        Verdict noted = at(5, "GLUE", "V1", true);
        assertThat(noted.outcome()).isEqualTo(Outcome.NOTED);
        assertThat(noted.remedy())
                .isNotNull()
                .extracting(Say::rule)
                .isEqualTo("only-what-the-position-takes-is-loaded");
        assertThat(charges()).containsExactly("V1 C-1");
    }

    @Test
    void aDoubleReadOfMaterialNeverLoadsAndPutsNothingInHand() {
        at(0, "GLUE", "V1");
        Verdict loaded = at(5, "GLUE", "A-1");
        int before = entries();
        Verdict again = at(5.8, "GLUE", "A-1");
        assertThat(again.said()).isEqualTo(loaded.said());
        assertThat(again.remedy()).isEqualTo(Say.of("read-twice"));
        assertThat(entries()).isEqualTo(before);
        assertThat(atWork.at("GLUE", OPERATOR).inHand()).isEqualTo(Say.of("hand.nothing"));
        assertThat(at(9, "GLUE", ".undo").said()).isEqualTo(Say.of("undo.done", "1"));
        assertThat(charges()).isEmpty();
    }

    @Test
    void materialThatIsReadAgainWhileItsPositionIsAskedForStaysInHandHoweverLate() {
        at(0, "GLUE", "A-1");
        Verdict again = at(600, "GLUE", "A-1");
        assertThat(again.said()).isEqualTo(Say.of("material.which-position", "A-1"));
        assertThat(charges()).isEmpty();
        assertThat(at(605, "GLUE", ".2").said()).isEqualTo(Say.of("material.loaded", "A-1", "V2"));
    }

    @Test
    void aKeptDoubleReadChangesNothingEither() {
        at(0, "GLUE", "V1", true);
        at(5, "GLUE", "A-1", true);
        at(5.5, "GLUE", "A-1", true);
        assertThat(charges()).containsExactly("V1 A-1");
        assertThat(jdbc.sql("SELECT count(*) FROM inbox.line")
                        .query(Integer.class)
                        .single())
                .isZero();
    }

    @Test
    void theSameLotReadAgainLaterIsAnotherScan() {
        floor.plant().receipt("07:00", "T-1", "TIM");
        at(0, "GLUE", "R0001");
        at(5, "GLUE", "C-1");
        assertThat(at(8, "GLUE", "T-1").said()).isEqualTo(Say.of("unit.done", "bond", "R0001"));
        at(9, "GLUE", "R0002");
        at(10, "GLUE", "T-1");
        assertThat(at(11, "GLUE", "C-1").said()).isEqualTo(Say.of("unit.done", "bond", "R0002"));
    }

    @Test
    void expiryAndHoldOfMaterialAreToldAtItsFirstScan() {
        floor.hold("08:30", "A-1");
        Verdict held = at(0, "GLUE", "A-1");
        assertThat(held.outcome()).isEqualTo(Outcome.REFUSED);
        assertThat(held.said().with()).contains("lot-is-not-on-hold");
        assertThat(atWork.at("GLUE", OPERATOR).inHand()).isEqualTo(Say.of("hand.nothing"));
    }

    @Test
    void aHoldOfAUnitIsToldAtItsFirstScanAndNotOnceItsMaterialIsThere() {
        at(0, "GLUE", "R0001");
        at(5, "GLUE", ".cancel");
        floor.plant().holdUnit("08:59", "REC R0001", "scratched");
        Verdict held = at(10, "GLUE", "R0001");
        assertThat(held.said())
                .isEqualTo(Say.of("said", "Unit REC R0001 is on hold: scratched", "unit-is-not-on-hold"));
        assertThat(atWork.at("GLUE", OPERATOR).units()).isEmpty();
    }

    @Test
    void aNewSerialIsNotGivenWhereItsOperationMayNotBegin() {
        at(0, "GLUE", "V1");
        at(5, "GLUE", "A-1");
        floor.hold("09:01", "A-1");
        Verdict held = at(90, "GLUE", "R0001");
        assertThat(held.said().with()).contains("lot-is-not-on-hold");
        assertThat(jdbc.sql("SELECT count(*) FROM production.birth")
                        .query(Integer.class)
                        .single())
                .isZero();
    }

    @Test
    void aNewSerialIsToldAsNewAndCanBeTakenBack() {
        Verdict begun = at(0, "GLUE", "R0001");
        assertThat(begun.said()).isEqualTo(Say.of("unit.in-hand", "R0001", "bond"));
        assertThat(begun.remedy()).isEqualTo(Say.of("unit.new", "R0001", "REC"));
        assertThat(at(5, "GLUE", ".undo").said()).isEqualTo(Say.of("undo.done", "1"));
        assertThat(atWork.at("GLUE", OPERATOR).units()).isEmpty();
        assertThat(at(10, "GLUE", "R0001").remedy()).isEqualTo(Say.of("unit.new", "R0001", "REC"));
        at(15, "GLUE", ".cancel");
        assertThat(at(20, "GLUE", "R0001").remedy()).isNull();
    }

    @Test
    void aNewSerialThatIsDoneAtOnceIsToldAsNewToo() {
        at(0, "GLUE", "V1");
        at(5, "GLUE", "A-1");
        at(10, "GLUE", "V2");
        at(15, "GLUE", "C-1");
        Verdict done = at(20, "GLUE", "R0001");
        assertThat(done.said()).isEqualTo(Say.of("unit.done", "bond", "R0001"));
        assertThat(done.remedy()).isEqualTo(Say.of("unit.new", "R0001", "REC"));
        assertThat(at(25, "GLUE", ".undo").said()).isEqualTo(Say.of("undo.done", "2"));
        assertThat(at(30, "GLUE", "R0001").remedy()).isEqualTo(Say.of("unit.new", "R0001", "REC"));
    }

    @Test
    void anOvenLabelReadTwiceDoesNotEndARunOfSecondsWithoutAsking() {
        bonded();
        at(100, "HEAT", "OVEN-7");
        at(105, "HEAT", "R0001");
        assertThat(at(110, "HEAT", "OVEN-7").said().key()).isEqualTo("run.begun");
        assertThat(at(111, "HEAT", "OVEN-7").said().key()).isEqualTo("run.begun");
        assertThat(at(120, "HEAT", "R0001").said().key()).isEqualTo("run.closed");
        Verdict asked = at(130, "HEAT", "OVEN-7");
        assertThat(asked.outcome()).isEqualTo(Outcome.ASKED);
        assertThat(asked.said()).isEqualTo(Say.of("run.so-soon", "OVEN-7", 20));
        assertThat(atWork.at("HEAT", OPERATOR).commands()).contains(Command.END);
        assertThat(at(135, "HEAT", ".1").said().key()).isEqualTo("run.over");
    }

    @Test
    void aRunThatTookItsTimeEndsByItsLabel() {
        bonded();
        at(100, "HEAT", "OVEN-7");
        at(105, "HEAT", "R0001");
        at(110, "HEAT", "OVEN-7");
        assertThat(at(1910, "HEAT", "OVEN-7").said().key()).isEqualTo("run.over");
    }

    private void bonded() {
        at(0, "GLUE", "V1");
        at(5, "GLUE", "A-1");
        at(10, "GLUE", "R0001");
        at(15, "GLUE", "C-1");
    }
}
