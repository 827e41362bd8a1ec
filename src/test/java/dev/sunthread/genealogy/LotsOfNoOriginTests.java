package dev.sunthread.genealogy;

import static dev.sunthread.genealogy.Certainty.CERTAIN;
import static dev.sunthread.genealogy.Certainty.UNPROVEN;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Supply;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** A lot that was used, and of which no record tells where it came from. */
@SunthreadTest
class LotsOfNoOriginTests {

    @Autowired
    Door door;

    @Autowired
    Traces traces;

    Plant plant;
    Asked asked;

    @BeforeEach
    void released() {
        plant = Plant.released(door);
        asked = new Asked(traces);
        plant.item("BASE", "lot", null, "g");
        new Supply(plant).structure("ADH", "base BASE");
        plant.birth("2 06:00", "RCV", "r1", "r2");
        plant.receipt("2 07:00", "A", "ADH");
        plant.receipt("2 07:00", "B", "BASE");
        plant.receipt("2 07:00", "C", "CELL");
    }

    @Test
    void mayBeOfEveryLotOfItsItemAndOfEachComponentOfItsFormula() {
        plant.bondWithLot("2 08:00", "r1", "X");
        Map<String, Certainty> through = Map.of("X", UNPROVEN, "r1", UNPROVEN);
        assertThat(asked.lot("A").ever()).isEqualTo(through);
        assertThat(asked.lot("B").ever()).isEqualTo(through);
        assertThat(asked.lot("C").ever()).isEmpty();
        assertThat(asked.unit("RCV", "r1").ever()).isEqualTo(Map.of("X", CERTAIN, "A", UNPROVEN, "B", UNPROVEN));
    }

    @Test
    void isNotOfALotThatCameAfterItsFirstSign() {
        plant.bondWithLot("2 08:00", "r1", "X");
        plant.receipt("3 07:00", "LATE", "ADH");
        assertThat(asked.lot("LATE").ever()).isEmpty();
    }

    @Test
    void lacksNothingOnceItsReceiptIsTold() {
        plant.bondWithLot("2 08:00", "r1", "X");
        plant.receipt("2 07:30", "X", "ADH");
        assertThat(asked.lot("A").ever()).isEmpty();
    }

    @Test
    void mayBeOfAnyLotIfNoUseTellsItsItem() {
        plant.charge("2 08:00", "X", "V1");
        assertThat(asked.lot("C").ever()).isEqualTo(Map.of("X", UNPROVEN));
    }
}
