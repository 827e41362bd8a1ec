package dev.sunthread.genealogy;

import static dev.sunthread.genealogy.Certainty.CERTAIN;
import static dev.sunthread.genealogy.Certainty.POSSIBLE;
import static dev.sunthread.genealogy.Certainty.UNPROVEN;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Supply;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** A container that was used, and of which no record tells what was filled into it. */
@SunthreadTest
class ContainersOfNoFillingTests {

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
        plant.birth("2 06:00", "RCV", "r1", "r2");
        plant.receipt("2 07:00", "A", "ADH");
        plant.receipt("2 07:00", "B", "ADH");
        plant.receipt("2 07:00", "C", "CELL");
    }

    /** The lot that it is named with holds it, and any other lot of the item may have gone in too. */
    @Test
    void mayHoldTheLotItIsNamedWithAndEveryOtherOfItsItem() {
        bond("2 08:00", "r1", "A", "K1");
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("K1", POSSIBLE, "r1", CERTAIN));
        assertThat(asked.lot("B").ever()).isEqualTo(Map.of("K1", UNPROVEN, "r1", UNPROVEN));
        assertThat(asked.lot("C").ever()).isEmpty();
        assertThat(asked.unit("RCV", "r1").ever()).isEqualTo(Map.of("A", CERTAIN, "K1", CERTAIN, "B", UNPROVEN));
    }

    @Test
    void mayBeTheOneThatWasNotScanned() {
        bond("2 08:00", "r1", "A", "K1");
        bond("2 08:10", "r2", "A", null);
        assertThat(asked.scope(new Scope.Container("K1")).ever()).isEqualTo(Map.of("r1", CERTAIN, "r2", POSSIBLE));
    }

    @Test
    void mayHoldEveryLotOfItsItemIfNoneIsNamedWithIt() {
        bond("2 08:00", "r1", null, "K1");
        Map<String, Certainty> through = Map.of("K1", UNPROVEN, "r1", UNPROVEN);
        assertThat(asked.lot("A").ever()).isEqualTo(through);
        assertThat(asked.lot("B").ever()).isEqualTo(through);
        assertThat(asked.lot("C").ever()).isEmpty();
    }

    @Test
    void mayHoldWhatWasRecoveredOutOfAUnitIfNoLotIsNamedWithIt() {
        plant.step("2 07:30", "place", "RCV", "r2", List.of(Map.of("item", "CELL", "lot", "C")));
        bond("2 08:00", "r1", null, "K1");
        assertThat(asked.lot("C").ever()).isEqualTo(Map.of("r2", CERTAIN, "K1", UNPROVEN, "r1", UNPROVEN));
    }

    @Test
    void mayHoldAnyLotIfItWasOnlyOpened() {
        plant.say("container-opening", "2 08:00", Map.of("container", "K1"));
        assertThat(asked.lot("C").ever()).isEqualTo(Map.of("K1", UNPROVEN));
    }

    @Test
    void isNotFilledFromALotThatCameAfterItsLastSign() {
        bond("2 08:00", "r1", "A", "K1");
        plant.receipt("3 07:00", "LATE", "ADH");
        assertThat(asked.lot("LATE").ever()).isEmpty();
    }

    /** Filled with B on record, and loaded as one of A. */
    @Test
    void mayHoldALotThatItWasLoadedAsThoughAnotherIsRecordedInIt() {
        new Supply(plant).containers("2 07:30", "B", "K1");
        plant.say("charge", "2 08:00", Map.of("lot", "A", "container", "K1", "station", "BOND", "position", "V1"));
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("K1", POSSIBLE));
        assertThat(asked.lot("B").ever()).isEqualTo(Map.of("K1", CERTAIN));
    }

    @Test
    void lacksNothingOnceItsFillingIsTold() {
        bond("2 08:00", "r1", "A", "K1");
        new Supply(plant).containers("2 07:30", "A", "K1");
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("K1", CERTAIN, "r1", CERTAIN));
        assertThat(asked.lot("B").ever()).isEmpty();
    }

    private void bond(String time, String serial, @Nullable String lot, @Nullable String container) {
        Map<String, Object> use = new HashMap<>(Map.of("item", "ADH"));
        if (lot != null) {
            use.put("lot", lot);
        }
        if (container != null) {
            use.put("container", container);
        }
        plant.step(time, "bond", "RCV", serial, List.of(use));
    }
}
