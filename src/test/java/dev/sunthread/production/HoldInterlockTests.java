package dev.sunthread.production;

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

/** A hold acts on all that the thing on hold is built together with: inside, around, and by its lots. */
@SunthreadTest
class HoldInterlockTests {

    private static final String INSIDE = "nothing-inside-is-on-hold";
    private static final String AROUND = "nothing-around-it-is-on-hold";
    private static final String LOT = "no-lot-in-it-is-on-hold";

    @Autowired
    Door door;

    private Plant plant;
    private Interlock interlock;

    /** R1 and R2 in wall W1 in module M1; R3 lies beside them. */
    @BeforeEach
    void built() {
        plant = Workshop.released(door).plant();
        interlock = new Interlock(plant);
        plant.receipt("1 06:00", "A", "ADH");
        plant.receipt("1 06:00", "L", "CELL");
        plant.birth("08:00", "MOD", "M1");
        plant.birth("08:00", "PANEL", "P1");
        plant.bondWithLot("08:30", "R1", "A");
        plant.install("09:00", "RCV R1", "WALL W1", "1");
        plant.install("09:01", "RCV R2", "WALL W1", "2");
        plant.install("09:02", "WALL W1", "MOD M1", "wall");
    }

    @Test
    void aHoldOnWhatIsInsideActsAtAnyDepth() {
        plant.holdUnit("10:00", "RCV R1", "scratch");
        assertThat(interlock.of(INSIDE, "step", "10:10", step("MOD M1")).sentence())
                .isEqualTo("Unit MOD M1 has RCV R1 inside, which is on hold: scratch");
        interlock.of(INSIDE, "shipment", "10:20", shipped("MOD M1"));
        interlock.of(INSIDE, "installation", "10:30", installed("MOD M1", "PANEL P1"));
    }

    @Test
    void aHoldOnTheParentActsOnWhatIsInItAtAnyDepth() {
        plant.holdUnit("10:00", "MOD M1", "bent");
        assertThat(interlock.of(AROUND, "step", "10:10", step("RCV R1")).sentence())
                .isEqualTo("Unit RCV R1 is built together with MOD M1, which is on hold: bent");
    }

    @Test
    void aHoldActsOnWhatIsBesideItUnlessTheOperationIsOnTheUnitAlone() {
        plant.holdUnit("10:00", "RCV R2", "scratch");
        interlock.of(AROUND, "step", "10:10", step("RCV R1"));
        plant.undo("10:15", plant.lastId());
        plant.say(
                "route",
                "1 00:00",
                Map.of(
                        "item",
                        "RCV",
                        "revision",
                        "A",
                        "operations",
                        List.of(Map.of("operation", "touch", "name", "Touch up", "reach", "unit-alone"))));
        interlock.none("step", "10:20", step("RCV R1"));
    }

    @Test
    void aHoldActsAsLongAsTheThingIsThere() {
        plant.holdUnit("10:00", "RCV R1", "scratch");
        plant.remove("10:10", "RCV R1", "WALL W1");
        interlock.none("step", "10:20", step("MOD M1"));
        plant.say("hold-release", "10:30", Map.of("entry", "said-" + holdNumber(), "hold", 1, "why", "polished"));
        interlock.none("installation", "10:40", installed("RCV R1", "WALL W1"));
    }

    private String holdNumber() {
        // the hold, the removal and the step came last
        return String.valueOf(Integer.parseInt(plant.lastId().substring("said-".length())) - 2);
    }

    @Test
    void aHoldOnALotActsOnWhatItWentInto() {
        plant.say("hold", "10:00", Map.of("lots", List.of("A"), "reason", "too thin"));
        assertThat(interlock.of(LOT, "step", "10:10", step("MOD M1")).sentence())
                .isEqualTo(
                        "Lot A, which went into unit MOD M1 or what it is built together with, is on hold: too thin");
        interlock.none("step", "10:20", step("RCV R3"));
    }

    @Test
    void aHoldOnALotActsOnWhatWasTakenFromWhereItWasLoaded() {
        plant.charge("08:30", "A", "V1");
        plant.bondAt("08:40", "R3", "V1");
        plant.say("hold", "10:00", Map.of("lots", List.of("A"), "reason", "too thin"));
        interlock.of(LOT, "step", "10:10", step("RCV R3"));
    }

    @Test
    void aHoldOnALotActsOnWhatHoldsAPartOfIt() {
        plant.say(
                "installation",
                "09:10",
                Map.of("child", Map.of("lot", "L"), "parent", unit("WALL W1"), "position", "lens"));
        plant.say("hold", "10:00", Map.of("lots", List.of("L"), "reason", "chipped"));
        interlock.of(LOT, "step", "10:10", step("MOD M1"));
    }

    @Test
    void aUnitThatWasHeldTogetherWithTheLotAndReleasedGoesOn() {
        plant.say("hold", "10:00", Map.of("lots", List.of("A"), "units", List.of(unit("RCV R1")), "reason", "thin"));
        String hold = plant.lastId();
        interlock.of(INSIDE, "step", "10:10", step("MOD M1"));
        plant.say("hold-release", "10:20", Map.of("entry", hold, "hold", 2, "why", "looked at, thick enough"));
        interlock.none("step", "10:30", step("MOD M1"));
    }

    private static Map<String, Object> step(String unit) {
        return new TreeMap<>(Workshop.stepped("touch", unit));
    }

    private static Map<String, Object> shipped(String unit) {
        return Map.of("shipment", "S-1", "consignee", "Sunny Field", "units", List.of(unit(unit)));
    }

    private static Map<String, Object> installed(String child, String parent) {
        return Map.of("child", Map.of("unit", unit(child)), "parent", unit(parent), "position", "1");
    }
}
