package dev.sunthread.production;

import static dev.sunthread.testing.Workshop.sentences;
import static dev.sunthread.testing.Workshop.stepped;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Together;
import dev.sunthread.testing.Workshop;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;

/** Many units are looked up at once, each under its own number. */
@SunthreadTest
class UnitNumbersTests {

    @Autowired
    Door door;

    @Autowired
    Units units;

    @Test
    void notesEachUnitOfAStepByItself() {
        Workshop workshop = Workshop.released(door);
        workshop.plant().holdUnit("08:30", "RCV R2", "scratched");
        workshop.plant().holdUnit("08:31", "RCV R2", "bent");
        assertThat(sentences(workshop.step("09:00", "bond", "RCV R1", "RCV R9", "RCV R2", "RCV R9")))
                .containsExactly(
                        "Unit RCV R9 has no birth record",
                        "Unit RCV R2 is on hold: scratched",
                        "Unit RCV R2 is on hold: bent");
    }

    @Test
    void twoWritersThatNameTheSameNewUnitsInOtherOrderBothEnd() throws Exception {
        Workshop.released(door);
        List<String> serials = new ArrayList<>(
                IntStream.range(0, 200).mapToObj(i -> "RCV N" + i).toList());
        Plant one = new Plant(door, "one");
        Plant two = new Plant(door, "two");
        var forward = stepped("bond", serials.toArray(String[]::new));
        Collections.reverse(serials);
        var backward = stepped("bond", serials.toArray(String[]::new));
        assertThat(Together.atOnce(List.of(
                        () -> one.say("step", "09:00", forward).isNew(),
                        () -> two.say("step", "09:00", backward).isNew())))
                .containsExactly(true, true);
        assertThat(units.find(Plant.id("RCV N17"))).isNotEqualTo(units.find(Plant.id("RCV N18")));
    }
}
