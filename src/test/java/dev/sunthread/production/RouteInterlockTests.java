package dev.sunthread.production;

import static dev.sunthread.testing.Workshop.rules;
import static dev.sunthread.testing.Workshop.unit;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Interlock;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Workshop;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What a released route says of its operations: their order, time, place, person and material. */
@SunthreadTest
class RouteInterlockTests {

    private static final String ORDER = "earlier-operations-are-done-before-the-next";

    @Autowired
    Door door;

    @Autowired
    JdbcClient jdbc;

    private Workshop workshop;
    private Interlock interlock;

    /** Receivers are bonded at BOND, coated 10 to 60 minutes later, and inspected by somebody qualified. */
    @BeforeEach
    void released() {
        workshop = Workshop.released(door);
        interlock = new Interlock(workshop.plant());
        workshop.plant().station("OTHER", "10", "V1");
        workshop.plant().item("ADH2", "lot", null, "g");
        workshop.plant().receipt("1 06:00", "A", "ADH");
        workshop.plant().receipt("1 06:00", "A2", "ADH2");
        workshop.plant().receipt("1 06:00", "C", "CELL");
        Map<String, Object> bond = new TreeMap<>(Map.of("operation", "bond", "name", "Bond"));
        bond.put("consumes", List.of("ADH"));
        bond.put("alternates", List.of(Map.of("item", "ADH", "alternate", "ADH2")));
        bond.put("stations", List.of("BOND"));
        Map<String, Object> coat = Map.of(
                "operation",
                "coat",
                "name",
                "Coat",
                "windows",
                List.of(Map.of("after", "bond", "atLeast", 600, "atMost", 3600)));
        Map<String, Object> inspect = Map.of("operation", "inspect", "name", "Inspect", "qualified", true);
        workshop.plant()
                .say(
                        "route",
                        "1 00:00",
                        Map.of("item", "RCV", "revision", "A", "operations", List.of(bond, coat, inspect)));
    }

    @Test
    void earlierOperationsOfTheRouteAreDoneFirst() {
        assertThat(interlock
                        .of(ORDER, "step", "09:00", step("inspect", "BOND", "RCV R1"))
                        .sentence())
                .isEqualTo("Unit RCV R1 has no record of bond, coat, which its route has before this");
        workshop.step("09:10", "bond", "RCV R2");
        workshop.step("09:30", "coat", "RCV R2");
        interlock.none("step", "09:40", step("inspect", "BOND", "RCV R2"));
    }

    @Test
    void aVoidedOperationIsNotDone() {
        workshop.step("09:10", "bond", "RCV R1");
        workshop.plant().undo("09:11", workshop.plant().lastId());
        interlock.of(ORDER, "step", "09:30", step("coat", "BOND", "RCV R1"));
    }

    @Test
    void aSignedDeviationExcusesAnOperation() {
        workshop.step("09:10", "bond", "RCV R1");
        workshop.plant()
                .say("deviation", "09:20", Map.of("unit", unit("RCV R1"), "operation", "coat", "why", "bare trial"));
        interlock.none("step", "09:30", step("inspect", "BOND", "RCV R1"));
    }

    @Test
    void aUnitGoesThroughItsRouteBeforeItGoesIntoAnother() {
        workshop.step("09:10", "bond", "RCV R1");
        assertThat(interlock
                        .of(ORDER, "installation", "09:30", installed("RCV R1"))
                        .sentence())
                .contains("no record of coat, inspect");
        interlock.of(ORDER, "shipment", "10:00", shipped("RCV R2"));
    }

    @Test
    void whatTheWholeRouteDemandsIsThereBeforeAUnitGoesIntoAnother() {
        workshop.plant()
                .say(
                        "route",
                        "2 00:00",
                        Map.of(
                                "item",
                                "RCV",
                                "revision",
                                "B",
                                "operations",
                                List.of(Map.of(
                                        "operation",
                                        "bond",
                                        "name",
                                        "Bond",
                                        "cures",
                                        List.of("BAKE"),
                                        "tests",
                                        List.of("PULL")))));
        workshop.step("09:10", "bond", "RCV R1");
        interlock.of("demanded-cure-is-done-before-the-next-operation", "installation", "09:30", installed("RCV R1"));
        workshop.step("09:10", "bond", "RCV R2");
        workshop.bake("10", "C1", "RCV R2");
        interlock.of("demanded-test-is-passed-before-the-next-operation", "installation", "10:30", installed("RCV R2"));
    }

    @Test
    void anOperationBeginsInItsWindow() {
        workshop.step("09:00", "bond", "RCV R1", "RCV R2", "RCV R3", "RCV R4");
        assertThat(interlock
                        .of("operation-begins-after-its-dwell", "step", "09:09", step("coat", "BOND", "RCV R1"))
                        .sentence())
                .isEqualTo("Unit RCV R1 began coat 0 h 9 min 0 s after bond, where 0 h 10 min 0 s have to pass");
        interlock.none("step", "09:10", step("coat", "BOND", "RCV R2"));
        assertThat(interlock
                        .of("operation-begins-within-its-window", "step", "10:01", step("coat", "BOND", "RCV R3"))
                        .sentence())
                .isEqualTo("Unit RCV R3 began coat 1 h 1 min 0 s after bond, where it is too late after 1 h 0 min 0 s");
        workshop.step("10:10", "bond", "RCV R4");
        interlock.none("step", "10:30", step("coat", "BOND", "RCV R4"));
    }

    @Test
    void theStationMayDoTheOperation() {
        assertThat(interlock
                        .of("station-may-do-the-operation", "step", "09:00", step("bond", "OTHER", "RCV R1"))
                        .remedy())
                .startsWith("Do it at BOND");
    }

    @Test
    void theOperatorIsQualifiedIfThisPlantKnowsThePerson() {
        workshop.step("09:00", "bond", "RCV R1", "RCV R2", "RCV R3");
        workshop.step("09:20", "coat", "RCV R1", "RCV R2", "RCV R3");
        interlock.none("step", "09:30", step("inspect", "BOND", "RCV R1"));
        jdbc.sql(
                        "WITH m AS (INSERT INTO access.mark (mark) VALUES ('op-1'))"
                                + " INSERT INTO access.person (mark, secrets_changed_at, made_at) VALUES ('op-1', now(), now())")
                .update();
        assertThat(interlock
                        .of("operator-is-qualified", "step", "09:30", step("inspect", "BOND", "RCV R2"))
                        .sentence())
                .isEqualTo("op-1 is not qualified for operation inspect");
        jdbc.sql("""
                        INSERT INTO access.qualification (person, operation, evidence, given_at, given_by)
                        SELECT id, 'inspect', 'trained', ?, 'pe-1' FROM access.person WHERE mark = 'op-1'
                        """).param(Plant.at("08:00")).update();
        interlock.none("step", "09:35", step("inspect", "BOND", "RCV R3"));
    }

    @Test
    void theItemTakenInIsOneThatTheOperationConsumesOrAnAlternate() {
        interlock.of("taken-in-item-is-one-that-the-operation-consumes", "step", "09:00", using("RCV R1", "CELL", "C"));
        interlock.none("step", "09:00", using("RCV R2", "ADH", "A"));
        interlock.none("step", "09:00", using("RCV R3", "ADH2", "A2"));
    }

    @Test
    void theLotIsOfTheItemTakenIn() {
        assertThat(interlock
                        .of("lot-is-of-the-item-taken-in", "step", "09:00", using("RCV R1", "ADH", "C"))
                        .sentence())
                .isEqualTo("Lot C is not of item ADH that was taken in");
        assertThat(rules(workshop.plant().charge("09:00", "C", "V1"))).isEmpty();
        interlock.of(
                "lot-is-of-the-item-taken-in",
                "step",
                "09:10",
                with(step("bond", "BOND", "RCV R2"), Map.of("item", "ADH", "position", "V1")));
    }

    private static Map<String, Object> step(String operation, String station, String... units) {
        Map<String, Object> body = new TreeMap<>(Workshop.stepped(operation, units));
        body.put("station", station);
        return body;
    }

    private static Map<String, Object> using(String unit, String item, String lot) {
        return with(step("bond", "BOND", unit), Map.of("item", item, "lot", lot));
    }

    private static Map<String, Object> with(Map<String, Object> step, Map<String, Object> use) {
        step.put("uses", List.of(use));
        return step;
    }

    private static Map<String, Object> installed(String unit) {
        return Map.of("child", Map.of("unit", unit(unit)), "parent", unit("WALL W1"), "position", unit.substring(4));
    }

    private static Map<String, Object> shipped(String unit) {
        return Map.of("shipment", "S-1", "consignee", "Sunny Field", "units", List.of(unit(unit)));
    }
}
