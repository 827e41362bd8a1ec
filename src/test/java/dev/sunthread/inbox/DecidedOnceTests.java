package dev.sunthread.inbox;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Interlock;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** A finding, a kept line and a hold are settled once; whoever is second is told who was first, where and when. */
@SunthreadTest
class DecidedOnceTests {

    private static final String FIRST = " before by op-1 at test on 2026-03-10 at 10:00:00";

    @Autowired
    Door door;

    Plant plant;
    Interlock interlock;

    @BeforeEach
    void built() {
        plant = Plant.released(door);
        interlock = new Interlock(plant);
    }

    @Test
    void refusesTheSecondSettlementOfAFinding() {
        plant.bondWithLot("08:00", "R7", "A-99");
        Map<String, Object> settled = Map.of("entry", plant.lastId(), "finding", 1, "why", "the receipt was late");
        interlock.none("finding-settlement", "10:00", settled);
        assertThat(interlock
                        .of("finding-is-settled-once", "finding-settlement", "10:10", settled)
                        .sentence())
                .endsWith(" was settled" + FIRST);
    }

    @Test
    void settlesAgainWhatWasVoided() {
        plant.bondWithLot("08:00", "R7", "A-99");
        Map<String, Object> settled = Map.of("entry", plant.lastId(), "finding", 1, "why", "the receipt was late");
        interlock.none("finding-settlement", "10:00", settled);
        plant.undo("10:05", plant.lastId());
        interlock.none("finding-settlement", "10:10", settled);
    }

    @Test
    void refusesTheSecondReleaseOfAHold() {
        plant.birth("08:00", "RCV", "R1");
        plant.holdUnit("09:00", "RCV R1", "scratch");
        Map<String, Object> released = Map.of("entry", plant.lastId(), "hold", 1, "why", "polished");
        interlock.none("hold-release", "10:00", released);
        assertThat(interlock
                        .of("hold-is-released-once", "hold-release", "10:10", released)
                        .sentence())
                .endsWith(" was released" + FIRST);
    }

    @Test
    void refusesTheSecondSettlementOfALine() {
        plant.say(
                "kept-line",
                "08:00",
                Map.of(
                        "file",
                        "shift",
                        "lineNumber",
                        1,
                        "length",
                        3,
                        "sha256",
                        "0".repeat(64),
                        "text",
                        "abc",
                        "problems",
                        List.of(Map.of("field", "line", "reason", "is no JSON", "remedy", "Mend it"))));
        Map<String, Object> settled = Map.of("line", plant.lastId(), "why", "a test of the scanner");
        interlock.none("line-settlement", "10:00", settled);
        assertThat(interlock
                        .of("line-is-settled-once", "line-settlement", "10:10", settled)
                        .sentence())
                .endsWith(" was settled" + FIRST);
    }
}
