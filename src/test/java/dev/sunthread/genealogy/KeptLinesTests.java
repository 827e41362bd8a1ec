package dev.sunthread.genealogy;

import static dev.sunthread.genealogy.Certainty.CERTAIN;
import static dev.sunthread.genealogy.Certainty.POSSIBLE;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** What a kept line carries and what it makes doubtful, by its kind; each as the smallest plant that shows it. */
@SunthreadTest
class KeptLinesTests {

    @Autowired
    Door door;

    @Autowired
    Sealer sealer;

    @Autowired
    Traces traces;

    @Autowired
    TraceFlows flows;

    Plant plant;
    Asked asked;

    @BeforeEach
    void released() {
        plant = Plant.released(door);
        asked = new Asked(traces);
        plant.receipt("1 06:00", "A", "ADH", "SUP-1");
        plant.receipt("1 06:00", "B", "ADH");
        plant.birth("2 06:00", "RCV", "r1", "r2");
        plant.birth("2 06:00", "WALL", "w1", "w2");
    }

    @Test
    void aHoldThatCouldNotBeReadJoinsNothing() {
        keep("hold", "08:30", Map.of("lot", "A", "units", List.of(Plant.unit("RCV r2")), "why", "crack"));
        assertThat(asked.lot("A").ever()).isEmpty();
    }

    @Test
    void aStepThatCouldNotBeReadCarriesNothingOutOfAUnit() {
        plant.bondWithLot("08:00", "r1", "A");
        plant.bondWithLot("10:00", "r2", "B");
        keep("step", "09:00", step("r1", "B"));
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r1", CERTAIN));
        assertThat(asked.lot("B").ever()).isEqualTo(Map.of("r1", POSSIBLE, "r2", CERTAIN));
    }

    @Test
    void aChargeThatCouldNotBeReadLeavesWhatWasLoadedBeforeOnlyPossible() {
        plant.charge("08:00", "A", "V1");
        plant.bondAt("08:30", "r1", "V1");
        plant.bondAt("10:00", "r2", "V1");
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r1", CERTAIN, "r2", CERTAIN));
        keep("charge", "09:00", Map.of("station", "BOND", "position", "V1", "lot", "B"));
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r1", CERTAIN, "r2", POSSIBLE));
        assertThat(asked.lot("B").ever()).isEqualTo(Map.of("r2", POSSIBLE));
    }

    @Test
    void aDischargeThatCouldNotBeReadLeavesWhatIsUsedAfterItOpen() {
        plant.charge("08:00", "A", "V1");
        plant.bondAt("08:30", "r1", "V1");
        keep("discharge", "09:00", Map.of("station", "BOND", "position", "V1"));
        plant.bondAt("10:00", "r2", "V1");
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r1", CERTAIN, "r2", POSSIBLE));
        assertThat(asked.lot("B").ever()).containsEntry("r2", Certainty.UNPROVEN);
    }

    @Test
    void whatAVoidThatCouldNotBeReadTakesBackIsOnlyPossible() {
        plant.bondWithLot("08:00", "r1", "A");
        keep("void", "09:00", Map.of("entry", plant.lastId(), "why", "never was"));
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r1", POSSIBLE));
    }

    @Test
    void aCorrectionThatCouldNotBeReadTellsWhatMayHaveBeenInstead() {
        plant.bondWithLot("08:00", "r1", "A");
        keep("correction", "09:00", Map.of("entry", plant.lastId(), "why", "B", "body", step("r1", "B")));
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r1", POSSIBLE));
        assertThat(asked.lot("B").ever()).isEqualTo(Map.of("r1", POSSIBLE));
    }

    @Test
    void aVoidOfAChargeThatCouldNotBeReadLeavesBothLotsPossible() {
        plant.charge("08:00", "A", "V1");
        plant.charge("09:00", "B", "V1");
        String charge = plant.lastId();
        plant.bondAt("10:00", "r1", "V1");
        keep("void", "11:00", Map.of("entry", charge, "why", "never was"));
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r1", POSSIBLE));
        assertThat(asked.lot("B").ever()).isEqualTo(Map.of("r1", POSSIBLE));
    }

    @Test
    void aRemovalThatCouldNotBeReadLeavesTheChildCertainUntilThenOnly() {
        plant.install("08:00", "RCV r1", "WALL w1", "1");
        plant.step("09:00", "bond", "WALL", "w1", List.of(use("A")));
        keep("removal", "10:00", inAnother("RCV r1", "WALL w1"));
        plant.step("11:00", "bond", "WALL", "w1", List.of(use("B")));
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("w1", CERTAIN, "r1", CERTAIN));
        assertThat(asked.lot("B").ever()).isEqualTo(Map.of("w1", CERTAIN, "r1", POSSIBLE));
    }

    @Test
    void anInstallationThatCouldNotBeReadMakesBothPlacesPossible() {
        plant.install("08:00", "RCV r1", "WALL w1", "1");
        keep("installation", "10:00", inAnother("RCV r1", "WALL w2"));
        plant.step("11:00", "bond", "WALL", "w1", List.of(use("A")));
        plant.step("11:00", "bond", "WALL", "w2", List.of(use("B")));
        assertThat(asked.lot("A").ever()).containsEntry("w1", CERTAIN).containsEntry("r1", POSSIBLE);
        assertThat(asked.lot("B").ever()).containsEntry("w2", CERTAIN).containsEntry("r1", POSSIBLE);
    }

    @Test
    void aBirthThatCouldNotBeReadOfAUnitThatWasBornLeavesNothingCertain() {
        plant.bondWithLot("08:00", "r1", "A");
        keep("birth", "08:10", Map.of("units", List.of(Plant.unit("RCV r1"))));
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r1", POSSIBLE));
    }

    @Test
    void aRunThatOnlyAKeptLineNamesReachesWhatWasOnItsTrayAndCanBeAskedFor() {
        plant.say(
                "carrier-load",
                "08:00",
                Map.of("carrier", "T1", "loads", List.of(Map.of("unit", Plant.unit("RCV r1")))));
        Map<String, Object> run = new LinkedHashMap<>();
        run.put("run", "C-9");
        run.put("carriers", List.of(Map.of("carrier", "T1")));
        run.put("startedAt", Plant.at("09:00").toString());
        keep("cure-run", "10:00", run);
        assertThat(asked.scope(new Scope.CureRun("C-9")).ever()).isEqualTo(Map.of("r1", POSSIBLE));
    }

    @Test
    void aLotThatOnlyKeptLinesNameLeadsOn() {
        plant.bondWithLot("08:00", "r1", "A");
        keep("recovery", "09:00", Map.of("unit", Plant.unit("RCV r1"), "lot", "R"));
        keep("step", "10:00", step("r2", "R"));
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r1", CERTAIN, "r2", POSSIBLE));
        assertThat(asked.lot("R").ever()).isEqualTo(Map.of("r2", POSSIBLE));
    }

    @Test
    void theReasonNamesTheLineTheHeadCountsItAndTheFlowDrawsIt() {
        keep("step", "09:00", step("r2", "A"));
        Asked.Seen seen = asked.lot("A");
        assertThat(seen.line("r2").reason()).contains("may have gone into", "by kept line " + plant.lastId());
        assertThat(seen.line("r2").keptLines()).containsExactly(plant.lastId());
        assertThat(asked.unit("RCV", "r2").head().openLines()).isEqualTo(1);
        assertThat(flows.of(seen.head()).links())
                .extracting(Flow.Link::from, Flow.Link::to)
                .contains(
                        org.assertj.core.groups.Tuple.tuple("suspects", "kept line POSSIBLE"),
                        org.assertj.core.groups.Tuple.tuple("kept line POSSIBLE", "receiver POSSIBLE"));
    }

    @Test
    void aSettledLineCountsNoMoreButAtAnEarlierCutOff() {
        keep("step", "09:00", step("r2", "A"));
        String line = plant.lastId();
        long before = sealer.seal();
        plant.say("line-settlement", "10:00", Map.of("line", line, "why", "a drill"));
        assertThat(asked.lot("A").ever()).isEmpty();
        assertThat(asked.asKnownAt(before).lot("A").ever()).isEqualTo(Map.of("r2", POSSIBLE));
    }

    private static Map<String, Object> step(String receiver, String lot) {
        return Map.of(
                "operation",
                "bond",
                "station",
                "BOND",
                "units",
                List.of(Plant.unit("RCV " + receiver)),
                "uses",
                List.of(use(lot)));
    }

    private static Map<String, Object> use(String lot) {
        return Map.of("item", "ADH", "lot", lot);
    }

    private static Map<String, Object> inAnother(String child, String parent) {
        return Map.of("child", Map.of("unit", Plant.unit(child)), "parent", Plant.unit(parent), "position", "1");
    }

    private void keep(String kind, String time, Map<String, Object> body) {
        Envelope line = plant.envelope(kind, time, body);
        plant.say(
                "kept-line",
                "12:00",
                Map.of(
                        "file",
                        "handheld.ndjson",
                        "lineNumber",
                        1,
                        "length",
                        10,
                        "sha256",
                        "0".repeat(64),
                        "text",
                        line.canonical(),
                        "problems",
                        List.of(Map.of("field", "body", "reason", "names no item", "remedy", "Mend it"))));
    }
}
