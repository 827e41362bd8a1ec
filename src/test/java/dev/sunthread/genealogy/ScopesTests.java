package dev.sunthread.genealogy;

import static dev.sunthread.genealogy.Certainty.CERTAIN;
import static dev.sunthread.genealogy.Certainty.POSSIBLE;
import static dev.sunthread.genealogy.Certainty.UNPROVEN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.sunthread.genealogy.Scope.Window;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Ovens;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** What each kind of scope stands for, on a real database. */
@SunthreadTest
class ScopesTests {

    @Autowired
    Door door;

    @Autowired
    Traces traces;

    Plant plant;
    Asked asked;

    @BeforeEach
    void worked() {
        plant = Plant.released(door);
        asked = new Asked(traces);
        plant.receipt("1 06:00", "A", "ADH", "SUP-1");
        plant.receipt("3 06:00", "B", "ADH");
        plant.birth("4 06:00", "RCV", "r1", "r2", "r3");
        plant.birth("4 06:00", "WALL", "w1");
        plant.bondWithLot("08:00", "r1", "A");
        plant.bondAt("09:00", "r2", "V1", "B");
        plant.say(
                "step",
                "10:00",
                Map.of(
                        "operation",
                        "cut",
                        "station",
                        "BOND",
                        "units",
                        List.of(Plant.unit("RCV r3")),
                        "values",
                        List.of(Map.of("name", "force", "value", "12.5", "unitOfMeasure", "N"))));
        plant.install("11:00", "RCV r1", "WALL w1", "1");
    }

    @Test
    void standsForStepsByStationOperatorOperationPositionAndValueInAWindow() {
        Window morning = new Window(Plant.at("07:00"), Plant.at("09:30"));
        assertReaches(new Scope.Station("BOND", morning), "r1", "r2", "w1");
        assertReaches(new Scope.Operator("op-1", morning), "r1", "r2", "w1");
        assertReaches(new Scope.Operation("cut", Window.OPEN), "r3");
        // a use that names no position may have drawn from any of the station
        assertReaches(new Scope.Position("BOND", "V1", Window.OPEN), "r1", "r2", "w1");
        assertReaches(new Scope.Value("force", new BigDecimal("12"), null, Window.OPEN), "r3");
        assertNothing(new Scope.Value("force", null, new BigDecimal("12"), Window.OPEN));
        assertNothing(new Scope.Operator("op-2", Window.OPEN));
    }

    @Test
    void joinsScopesAndTakesSuspectsAwayBeforeTheWalk() {
        Scope bonds = new Scope.Operation("bond", Window.OPEN);
        Scope early = new Scope.Station("BOND", new Window(null, Plant.at("08:30")));
        assertReaches(new Scope.Any(List.of(early, new Scope.Operation("cut", Window.OPEN))), "r1", "r3", "w1");
        assertReaches(new Scope.All(List.of(bonds, early)), "r1", "w1");
        assertReaches(new Scope.Except(bonds, early), "r2");
        // a suspect unit is taken away, not what another suspect reaches
        assertReaches(
                new Scope.Except(
                        new Scope.Any(List.of(new Scope.Lot("A"), new Scope.Units(List.of(unit("RCV", "r2")), null))),
                        new Scope.Units(List.of(unit("RCV", "r1")), null)),
                "r1",
                "w1");
    }

    @Test
    void standsForLotsByWhenTheyWereReceivedAndForThoseWhoseSupplierLotIsNotRecorded() {
        assertReaches(new Scope.Received("ADH", null, new Window(Plant.at("2 00:00"), null)), "r2");
        assertReaches(new Scope.Received("ADH", "Far Supplier", Window.OPEN), "r1", "r2", "w1");
        assertNothing(new Scope.Received("ADH", "Near Supplier", Window.OPEN));
        assertThat(asked.scope(new Scope.SupplierLot("SUP-1")).ever())
                .isEqualTo(Map.of("r1", CERTAIN, "w1", CERTAIN, "r2", UNPROVEN));
    }

    @Test
    void countsAUnitFromItsBirthOrFromAStatedTime() {
        plant.remove("12:00", "RCV r1", "WALL w1");
        Scope.UnitName r1 = unit("RCV", "r1");
        assertReaches(new Scope.Units(List.of(r1), null), "w1");
        assertThat(asked.scope(new Scope.Units(List.of(r1), Plant.at("12:30"))).ever())
                .isEmpty();
    }

    @Test
    void standsForParentsChildrenAndWhatWasOnACarrier() {
        assertThat(asked.scope(new Scope.Parents(new Scope.Units(List.of(unit("RCV", "r1")), null)))
                        .head()
                        .suspects())
                .containsExactly("wall w1");
        assertThat(asked.scope(new Scope.Children(new Scope.Units(List.of(unit("WALL", "w1")), null)))
                        .ever())
                .isEqualTo(Map.of("w1", CERTAIN));
        Ovens ovens = Ovens.released(plant);
        ovens.load("06:00", "T1", "RCV r1", "RCV r2");
        ovens.unload("06:30", "T1", "RCV r1");
        assertThat(asked.scope(new Scope.Carrier("T1", new Window(Plant.at("06:10"), Plant.at("06:20"))))
                        .ever())
                .isEqualTo(Map.of("w1", CERTAIN));
        assertThat(asked.scope(new Scope.Carrier("T1", new Window(Plant.at("07:00"), Plant.at("07:20"))))
                        .head()
                        .suspects())
                .containsExactly("receiver r2");
        plant.install("12:00", "RCV r2", "WALL w1", "2");
        assertThat(asked.scope(new Scope.Carrier("T1", new Window(Plant.at("07:00"), Plant.at("07:20"))))
                        .ever())
                .isEqualTo(Map.of("w1", POSSIBLE));
    }

    @Test
    void refusesWhatNobodyRecorded() {
        assertThatThrownBy(() -> asked.scope(new Scope.CureRun("C-9")))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("Cure run C-9 is not recorded");
        assertThatThrownBy(() -> asked.scope(new Scope.Container("C-9")))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("Container C-9 is not recorded");
    }

    private void assertReaches(Scope scope, String... names) {
        assertThat(asked.scope(scope).ever().keySet()).as(scope.toString()).isEqualTo(Set.of(names));
    }

    private void assertNothing(Scope scope) {
        assertThatThrownBy(() -> asked.scope(scope))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("Nothing that is recorded falls under the scope");
    }

    private static Scope.UnitName unit(String item, String serial) {
        return new Scope.UnitName(item, serial, null);
    }
}
