package dev.sunthread.materials.stock;

import static dev.sunthread.materials.stock.Storage.COOLED;
import static dev.sunthread.materials.stock.Storage.FROZEN;
import static dev.sunthread.materials.stock.Storage.ROOM;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.testing.Plant;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Hard case 24: out-time of frozen material counts with every excursion. */
class OutTimeTests {

    /** Out from 08:00 to 09:30 and from 14:00 on: 1 h 30 min and, at 16:15, 2 h 15 min more. */
    @Test
    void everyExcursionCountsAndTheLastOneGoesOn() {
        OutTime out = OutTime.of(
                List.of(moved("06:00", FROZEN), moved("08:00", ROOM), moved("09:30", FROZEN), moved("14:00", ROOM)),
                Plant.at("16:15"));
        assertThat(out).isEqualTo(new OutTime(Duration.ofMinutes(225), 2, Plant.at("14:00")));
        assertThat(out.words()).isEqualTo("3 h 45 min");
    }

    @Test
    void moveFromOneRoomToAnotherGoesOnWithTheSameExcursion() {
        OutTime out = OutTime.of(
                List.of(moved("08:00", ROOM), moved("09:00", ROOM), moved("10:00", COOLED)), Plant.at("12:00"));
        assertThat(out).isEqualTo(new OutTime(Duration.ofHours(2), 1, null));
    }

    @Test
    void movesComeInAnyOrderAndLaterOnesAreNotSeen() {
        OutTime out = OutTime.of(
                List.of(moved("11:00", FROZEN), moved("08:00", ROOM), moved("13:00", ROOM)), Plant.at("12:00"));
        assertThat(out).isEqualTo(new OutTime(Duration.ofHours(3), 1, null));
    }

    @Test
    void nothingIsCountedBeforeTheFirstMove() {
        assertThat(OutTime.of(List.of(), Plant.at("12:00"))).isEqualTo(new OutTime(Duration.ZERO, 0, null));
    }

    private static ContainerMove moved(String time, Storage storage) {
        return new ContainerMove("place", storage, Plant.at(time), "entry");
    }
}
