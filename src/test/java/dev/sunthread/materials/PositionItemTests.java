package dev.sunthread.materials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.sunthread.kernel.RuleBroken;
import dev.sunthread.ledger.Acceptance;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Manner;
import dev.sunthread.ledger.body.Unreadable;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Positions that state which items may be loaded there. */
@SunthreadTest
class PositionItemTests {

    private static final String RULE = "only-what-the-position-takes-is-loaded";

    @Autowired
    Door door;

    @Autowired
    JdbcClient jdbc;

    private Plant plant;

    @BeforeEach
    void release() {
        plant = Plant.released(door);
        plant.item("ADH2", "lot", null, "g");
        plant.receipt("07:00", "A-1", "ADH");
        plant.receipt("07:00", "B-1", "ADH2");
        plant.receipt("07:00", "C-1", "CELL");
    }

    private Acceptance revision(String revision, String time, List<Map<String, Object>> takes) {
        Map<String, Object> body = new TreeMap<>(Map.of("station", "BOND", "revision", revision, "name", "Bonding"));
        body.putAll(Map.of("clockUncertainty", "10", "positions", List.of("V1", "V2"), "takes", takes));
        return plant.say("station", time, body);
    }

    private static List<Map<String, Object>> takes(String position, String... items) {
        return List.of(Map.of("position", position, "items", List.of(items)));
    }

    private List<String> charged(String time, String lot, String position, Manner manner) {
        return plant
                .say("charge", time, Map.of("lot", lot, "station", "BOND", "position", position), manner)
                .findings()
                .stream()
                .map(finding -> finding.rule() + ": " + finding.sentence())
                .toList();
    }

    @Test
    void refusesALotOfAnItemThatThePositionDoesNotTake() {
        revision("B", "2 00:00", takes("V1", "ADH"));
        assertThat(charged("09:00", "A-1", "V1", Manner.DO)).isEmpty();
        assertThat(charged("09:10", "C-1", "V2", Manner.DO)).isEmpty();
        assertThatThrownBy(() -> charged("08:10", "C-1", "V1", Manner.DO))
                .isInstanceOfSatisfying(RuleBroken.class, broken -> {
                    assertThat(broken.rule()).isEqualTo(RULE);
                    assertThat(broken.reason()).isEqualTo("Lot C-1 was loaded at position V1 of BOND, which takes ADH");
                });
    }

    @Test
    void recordsItWithAFindingWhereItIsTold() {
        revision("B", "2 00:00", takes("V1", "ADH"));
        assertThat(charged("09:00", "C-1", "V1", Manner.TOLD))
                .containsExactly(RULE + ": Lot C-1 was loaded at position V1 of BOND, which takes ADH");
        assertThat(jdbc.sql("SELECT count(*) FROM materials.charge")
                        .query(Integer.class)
                        .single())
                .isEqualTo(1);
    }

    @Test
    void takesAnyItemWhereTheRevisionInForceStatesNone() {
        revision("B", "5 00:00", takes("V1", "ADH"));
        revision("C", "8 00:00", List.of());
        assertThat(charged("4 09:00", "C-1", "V1", Manner.DO)).isEmpty();
        assertThat(charged("9 09:00", "C-1", "V2", Manner.DO)).isEmpty();
        assertThat(charged("9 09:00", "A-1", "V1", Manner.TOLD)).noneMatch(finding -> finding.startsWith(RULE));
        assertThat(charged("6 09:00", "C-1", "V1", Manner.TOLD)).anyMatch(finding -> finding.startsWith(RULE));
    }

    @Test
    void takesWhatARouteApprovesInsteadOfAStatedItem() {
        revision("B", "2 00:00", takes("V1", "ADH"));
        Map<String, Object> bond =
                new TreeMap<>(Map.of("operation", "bond", "name", "Bond", "consumes", List.of("ADH")));
        bond.put("alternates", List.of(Map.of("item", "ADH", "alternate", "ADH2")));
        plant.say("route", "8 00:00", Map.of("item", "RCV", "revision", "A", "operations", List.of(bond)));
        assertThat(charged("9 09:00", "B-1", "V1", Manner.DO)).isEmpty();
        assertThat(charged("7 09:00", "B-1", "V1", Manner.TOLD)).anyMatch(finding -> finding.startsWith(RULE));
    }

    @Test
    void takesWhatAStructureApprovesInsteadOfAStatedItem() {
        revision("B", "2 00:00", takes("V1", "ADH", "CELL"));
        Map<String, Object> place = Map.of("position", "P1", "items", List.of("ADH", "ADH2"));
        plant.say("structure", "2 00:00", Map.of("item", "WALL", "revision", "A", "positions", List.of(place)));
        assertThat(charged("09:00", "B-1", "V1", Manner.DO)).isEmpty();
    }

    @Test
    void aDefinitionNamesKnownItemsOfLotsOncePerPosition() {
        assertThatThrownBy(() -> revision("B", "2 00:00", takes("V1", "WALL")))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining("body.takes[0].items[0]: names item \"WALL\", which is tracked by serial");
        assertThatThrownBy(() -> revision("B", "2 00:00", takes("V1", "ADH", "ADH")))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining("body.takes[0].items[1]: names item \"ADH\" of position \"V1\" twice");
        assertThatThrownBy(() -> revision("B", "2 00:00", takes("V7", "ADH")))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining("body.takes[0].position: names position \"V7\"");
        assertThatThrownBy(() -> revision("B", "2 00:00", takes("V1")))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining("body.takes[0].items");
    }
}
