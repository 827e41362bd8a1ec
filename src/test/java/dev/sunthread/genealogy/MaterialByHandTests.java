package dev.sunthread.genealogy;

import static dev.sunthread.genealogy.Certainty.CERTAIN;
import static dev.sunthread.genealogy.Certainty.POSSIBLE;
import static dev.sunthread.genealogy.Certainty.UNPROVEN;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Material of which neither a label was scanned nor a position named: it need not have been loaded at all. */
@SunthreadTest
class MaterialByHandTests {

    @Autowired
    Door door;

    @Autowired
    Traces traces;

    Plant plant;
    Asked asked;

    @BeforeEach
    void oneLotIsLoadedAndOneIsNot() {
        plant = Plant.released(door);
        asked = new Asked(traces);
        plant.birth("2 06:00", "RCV", "r1", "r2");
        plant.receipt("2 07:00", "A", "ADH");
        plant.receipt("2 07:00", "B", "ADH");
        plant.charge("2 07:30", "A", "V1");
        plant.step("2 08:00", "bond", "RCV", "r1", List.of(Map.of("item", "ADH")));
        plant.bondAt("2 08:10", "r2", "V1");
    }

    @Test
    void mayBeOfAnyLotOfItsItem() {
        assertThat(asked.lot("B").ever()).isEqualTo(Map.of("r1", UNPROVEN));
        assertThat(asked.unit("RCV", "r1").ever()).isEqualTo(Map.of("A", POSSIBLE, "B", UNPROVEN));
    }

    @Test
    void isNoMoreThanPossiblyWhatWasLoaded() {
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r1", POSSIBLE, "r2", CERTAIN));
    }

    @Test
    void isOfNoLotThatCameLater() {
        plant.receipt("2 09:00", "LATER", "ADH");
        assertThat(asked.lot("LATER").ever()).isEmpty();
    }
}
