package dev.sunthread.genealogy;

import static dev.sunthread.genealogy.Certainty.CERTAIN;
import static dev.sunthread.genealogy.Certainty.POSSIBLE;
import static dev.sunthread.genealogy.Certainty.UNPROVEN;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.journal.Imports;
import dev.sunthread.journal.Sender;
import dev.sunthread.kernel.UnitId;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/**
 * The hard cases of what is recorded badly, late or not at all, each as the smallest plant that shows it, on a real
 * database. A query that follows parents to children would have given the answer that the comment names.
 */
@SunthreadTest
class HardCasesOfRecordsTests {

    @Autowired
    Door door;

    @Autowired
    Traces traces;

    @Autowired
    Imports imports;

    Plant plant;
    Asked asked;

    @BeforeEach
    void released() {
        plant = Plant.released(door);
        asked = new Asked(traces);
        plant.receipt("1 06:00", "A", "ADH", "SUP-1");
        plant.receipt("09:30", "LATE", "ADH");
        plant.say(
                "route",
                "1 01:00",
                Map.of(
                        "item",
                        "RCV",
                        "revision",
                        "A",
                        "operations",
                        List.of(
                                Map.of("operation", "bond", "name", "Bond", "consumes", List.of("ADH")),
                                Map.of("operation", "inspect", "name", "Look", "consumes", List.of()))));
        plant.birth("2 06:00", "RCV", "r1", "r2");
        plant.birth("2 06:00", "WALL", "w1", "w2");
        plant.birth("2 06:00", "PANEL", "p1");
    }

    /** An inner join of units and uses: r1 would be clean of everything. */
    @Test
    void case9MissingScanIsUnprovenAndNeverDropped() {
        plant.step("09:00", "inspect", "RCV", "r1", List.of());
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r1", UNPROVEN));
        assertThat(asked.lot("LATE").ever()).isEmpty();
        assertThat(asked.unit("RCV", "r1").ever()).isEqualTo(Map.of("A", UNPROVEN));
        assertThat(asked.lot("A").line("r1").reason())
                .contains("what went into")
                .contains("bond");
        plant.say(
                "deviation",
                "11:00",
                Map.of(
                        "unit",
                        Plant.unit("RCV r1"),
                        "operation",
                        "bond",
                        "item",
                        "ADH",
                        "why",
                        "dummy without a cell"));
        assertThat(asked.lot("A").ever()).isEmpty();
    }

    /** The order of telling: r1 would have no lot, for the charge came after the use. */
    @Test
    void case18LateScansAndSkewedClocksCountByWhenTheyHappened() {
        plant.bondAt("08:30", "r1", "V1");
        plant.bondAt("08:00", "r2", "V1");
        plant.charge("08:00", "A", "V1");
        assertThat(asked.lot("A").ever()).containsEntry("r1", CERTAIN).containsEntry("r2", POSSIBLE);
    }

    /** Local times: the second 02:30 of the night would lie before the charge of 02:45. */
    @Test
    void case18OffsetsCarryOverTheEndOfDaylightSaving() {
        Said charge = new Said(
                "dst-1",
                "charge",
                java.time.OffsetDateTime.parse("2026-10-25T02:45:00+02:00"),
                Map.of("lot", "A", "station", "BOND", "position", "V1"));
        Said step = new Said(
                "dst-2",
                "step",
                java.time.OffsetDateTime.parse("2026-10-25T02:30:00+01:00"),
                Map.of(
                        "operation",
                        "bond",
                        "station",
                        "BOND",
                        "units",
                        List.of(Plant.unit("RCV r1")),
                        "uses",
                        List.of(Map.of("item", "ADH", "position", "V1"))));
        door.accept(charge.envelope(), dev.sunthread.ledger.Manner.TOLD);
        door.accept(step.envelope(), dev.sunthread.ledger.Manner.TOLD);
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r1", CERTAIN));
    }

    /** The serial alone: the sister plant's r1 would be taken for this one. */
    @Test
    void case19IdentityIsIssuerItemAndSerialAndTwoBodiesLeaveNothingCertain() {
        plant.bondWithLot("08:00", "r1", "A");
        plant.say(
                "birth",
                "08:10",
                Map.of("units", List.of(Map.of("item", "RCV", "serial", "r1", "issuer", "Sister Plant"))));
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r1", CERTAIN));
        assertThat(asked.unit(new UnitId("Sister Plant", "RCV", "r1")).ever()).isEmpty();
        plant.birth("08:20", "RCV", "r1");
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r1", POSSIBLE));
        plant.undo("08:30", plant.lastId());
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r1", CERTAIN));
    }

    /** Folded text: lots A-017, a-017 and A-O17 would be one. */
    @Test
    void case20NamesThatLookAlikeAreDifferentThings() {
        plant.receipt("1 06:00", "A-017", "ADH");
        plant.receipt("1 06:00", "A-O17", "ADH");
        plant.receipt("1 06:00", "a-017", "ADH");
        plant.bondWithLot("08:00", "r1", "A-017");
        plant.bondWithLot("08:10", "r2", "A-O17");
        assertThat(asked.lot("A-017").ever()).isEqualTo(Map.of("r1", CERTAIN));
        assertThat(asked.lot("A-O17").ever()).isEqualTo(Map.of("r2", CERTAIN));
        assertThat(asked.lot("a-017").ever()).isEmpty();
    }

    /** One sum over levels: three units would be told where one receiver is in one wall in one panel. */
    @Test
    void case27CountsAreOfDistinctUnitsPerLevel() {
        plant.bondWithLot("08:00", "r1", "A");
        plant.bondWithLot("08:05", "r2", "A");
        plant.install("09:00", "RCV r1", "WALL w1", "1");
        plant.install("09:05", "RCV r2", "WALL w1", "2");
        plant.install("10:00", "WALL w1", "PANEL p1", "1");
        assertThat(asked.lot("A").head().counts().stream().filter(count -> count.when() == When.EVER))
                .extracting(Count::level, Count::certain)
                .containsExactlyInAnyOrder(
                        org.assertj.core.groups.Tuple.tuple("receiver", 2L),
                        org.assertj.core.groups.Tuple.tuple("wall", 1L),
                        org.assertj.core.groups.Tuple.tuple("panel", 1L));
    }

    /** Accepted lines only: r2 would be clean of A, for its line could not be read. */
    @Test
    void case34LineThatCouldNotBeReadMayHideAMemberUntilAPersonSettlesIt() throws IOException {
        plant.bondWithLot("08:00", "r1", "A");
        String lines = """
                {"journal":1}
                {"id": "x-1", "kind": "step", "version": 1, "occurredAt": "2026-03-10T08:30:00+01:00", "body": \
                {"units": [{"item": "RCV", "serial": "r2"}], "uses": [{"item": "ADH", "lot": "A"}
                """;
        imports.run(
                new ByteArrayInputStream(lines.getBytes(StandardCharsets.UTF_8)),
                new Sender("import", "broken.ndjson"),
                line -> {});
        assertThat(asked.lot("A").ever()).containsEntry("r1", CERTAIN).containsEntry("r2", POSSIBLE);
        assertThat(asked.unit("RCV", "r2").ever()).containsEntry("A", POSSIBLE);
        assertThat(asked.lot("A").head().openLines()).isEqualTo(1);
    }
}
