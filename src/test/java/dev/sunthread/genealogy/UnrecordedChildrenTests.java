package dev.sunthread.genealogy;

import static dev.sunthread.genealogy.Certainty.CERTAIN;
import static dev.sunthread.genealogy.Certainty.POSSIBLE;
import static dev.sunthread.genealogy.Certainty.UNPROVEN;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Supply;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** A wall that was sealed with a place of which no record tells what is in it: what may have been there, and when. */
@SunthreadTest
class UnrecordedChildrenTests {

    @Autowired
    Door door;

    @Autowired
    Traces traces;

    Plant plant;
    Asked asked;

    @BeforeEach
    void sealedWithAPlaceUnrecorded() {
        plant = Plant.released(door);
        asked = new Asked(traces);
        plant.receipt("1 06:00", "A", "ADH");
        new Supply(plant).structure("WALL", "1 RCV", "2 RCV");
        plant.say(
                "route",
                "1 01:00",
                Map.of(
                        "item",
                        "WALL",
                        "revision",
                        "A",
                        "operations",
                        List.of(
                                Map.of("operation", "fit", "name", "Fit", "consumes", List.of("RCV")),
                                Map.of("operation", "seal", "name", "Seal", "consumes", List.of()))));
        plant.birth("2 06:00", "RCV", "r1", "r2");
        plant.birth("2 06:00", "WALL", "w1", "w2");
        plant.install("08:00", "RCV r1", "WALL w1", "1");
        plant.step("10:00", "seal", "WALL", "w1", List.of());
    }

    @Test
    void workOnOneThatMayBeInItActsOnWhatWasInItThen() {
        plant.bondWithLot("09:00", "r2", "A");
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r2", CERTAIN, "w1", UNPROVEN, "r1", UNPROVEN));
    }

    @Test
    void workOnOneThatMayBeInItActsNotOnWhatCameLater() {
        plant.bondWithLot("07:00", "r2", "A");
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r2", CERTAIN, "w1", UNPROVEN));
    }

    @Test
    void workThatActsOnAUnitAloneActsNotOnWhatIsAroundIt() {
        plant.say(
                "route",
                "1 01:00",
                Map.of(
                        "item",
                        "RCV",
                        "revision",
                        "A",
                        "operations",
                        List.of(Map.of(
                                "operation",
                                "bond",
                                "name",
                                "Bond",
                                "consumes",
                                List.of("ADH"),
                                "reach",
                                "unit-alone"))));
        plant.receipt("1 06:00", "B", "ADH");
        plant.bondWithLot("07:00", "r1", "B");
        plant.bondWithLot("09:00", "r2", "A");
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r2", CERTAIN, "w1", UNPROVEN));
    }

    @Test
    void oneThatIsElsewhereLaterWasInItBeforeThatOnly() {
        plant.install("11:00", "RCV r2", "WALL w2", "1");
        plant.bondWithLot("12:00", "r2", "A");
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r2", CERTAIN, "w2", CERTAIN));
        plant.bondWithLot("10:30", "r2", "A");
        assertThat(asked.lot("A").ever())
                .isEqualTo(Map.of("r2", CERTAIN, "w2", CERTAIN, "w1", UNPROVEN, "r1", UNPROVEN));
    }

    @Test
    void oneThatWasElsewhereBeforeWasInItAfterThatOnly() {
        plant.install("06:00", "RCV r2", "WALL w2", "1");
        plant.remove("09:00", "RCV r2", "WALL w2");
        plant.step("08:30", "glue", "WALL", "w1", List.of(Map.of("item", "ADH", "lot", "A")));
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("w1", CERTAIN, "r1", CERTAIN));
        plant.step("09:30", "glue", "WALL", "w1", List.of(Map.of("item", "ADH", "lot", "A")));
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("w1", CERTAIN, "r1", CERTAIN, "r2", UNPROVEN));
    }

    /** The one that came up through the place fills it, so that no other was in it. */
    @Test
    void twoAreNotInOnePlaceAtOnce() {
        plant.birth("2 06:00", "RCV", "r3");
        plant.bondWithLot("09:00", "r2", "A");
        assertThat(asked.unit("RCV", "r3").ever()).doesNotContainKey("A");
    }

    @Test
    void aBirthToldAgainByItsStationWithinMomentsIsNoSecondBody() {
        bornAtBond("2 07:00", "r9");
        bornAtBond("2 07:00", "r9");
        plant.bondWithLot("09:00", "r9", "A");
        assertThat(asked.lot("A").ever()).containsEntry("r9", CERTAIN);
        bornAtBond("2 07:01", "r9");
        assertThat(asked.lot("A").ever()).containsEntry("r9", POSSIBLE);
    }

    private void bornAtBond(String time, String serial) {
        plant.say("birth", time, Map.of("station", "BOND", "units", List.of(Plant.unit("RCV " + serial))));
    }
}
