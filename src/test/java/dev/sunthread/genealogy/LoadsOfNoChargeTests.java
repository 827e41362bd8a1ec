package dev.sunthread.genealogy;

import static dev.sunthread.genealogy.Certainty.CERTAIN;
import static dev.sunthread.genealogy.Certainty.POSSIBLE;
import static dev.sunthread.genealogy.Certainty.UNPROVEN;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Material that was drawn at a position where no record tells that anything was loaded, and what was left of it. */
@SunthreadTest
class LoadsOfNoChargeTests {

    @Autowired
    Door door;

    @Autowired
    Traces traces;

    Plant plant;
    Asked asked;

    @BeforeEach
    void drawnWithoutACharge() {
        plant = Plant.released(door);
        asked = new Asked(traces);
        plant.birth("2 06:00", "RCV", "r1", "r2", "r3");
        plant.receipt("2 07:00", "A", "ADH");
        plant.receipt("2 07:00", "B", "ADH");
        plant.bondAt("2 08:00", "r1", "V1");
        plant.discharge("2 08:10", "V1");
        plant.receipt("2 08:15", "LATER", "ADH");
        plant.charge("2 08:20", "B", "V1");
    }

    @Test
    void areLeftBehindAsAnyOther() {
        plant.bondAt("2 08:30", "r2", "V1");
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r1", UNPROVEN, "r2", UNPROVEN));
        assertThat(asked.lot("B").ever()).isEqualTo(Map.of("r1", POSSIBLE, "r2", CERTAIN));
        assertThat(asked.unit("RCV", "r2").ever()).isEqualTo(Map.of("A", UNPROVEN, "B", CERTAIN));
    }

    @Test
    void areNotOfALotThatCameAfterTheUseThatShowsThem() {
        plant.bondAt("2 08:30", "r2", "V1");
        assertThat(asked.lot("LATER").ever()).isEmpty();
    }

    @Test
    void endAtACleanPoint() {
        plant.cleanPoint("2 08:25", "V1");
        plant.bondAt("2 08:30", "r2", "V1");
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("r1", UNPROVEN));
    }

    @Test
    void areNoneOnceTheChargeIsTold() {
        plant.charge("2 07:30", "B", "V1");
        plant.bondAt("2 08:30", "r2", "V1");
        assertThat(asked.lot("A").ever()).isEmpty();
    }
}
