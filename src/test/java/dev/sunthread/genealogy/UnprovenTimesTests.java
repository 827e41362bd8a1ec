package dev.sunthread.genealogy;

import static dev.sunthread.genealogy.Certainty.CERTAIN;
import static dev.sunthread.genealogy.Certainty.POSSIBLE;
import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.genealogy.Scope.Window;
import dev.sunthread.journal.Exports;
import dev.sunthread.journal.Restores;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.TestDatabase;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;

/** A clock that was set dates what was done with one lot into the time of another; no answer misses it. */
@SunthreadTest
class UnprovenTimesTests {

    @Autowired
    Door door;

    @Autowired
    Traces traces;

    @Autowired
    Exports exports;

    @Autowired
    Restores restores;

    @Autowired
    ApplicationContext context;

    Plant plant;
    Asked asked;

    @BeforeEach
    void lotsThatChangedAtNoon() {
        plant = Plant.released(door);
        asked = new Asked(traces);
        plant.receipt("1 06:00", "A", "ADH", "SUP-1");
        plant.receipt("1 06:00", "B", "ADH", "SUP-2");
        plant.birth("2 06:00", "RCV", "early", "wrong", "late");
        plant.charge("07:00", "A", "V1");
        plant.bondAt("07:30", "early", "V1");
        plant.discharge("12:00", "V1");
        plant.cleanPoint("12:05", "V1");
        plant.charge("12:10", "B", "V1");
    }

    private void spell(String from) {
        plant.say(
                "unproven-times",
                "15:00",
                Map.of(
                        "station",
                        "BOND",
                        "from",
                        "2026-03-10T" + from + ":00+01:00",
                        "to",
                        "2026-03-10T14:00:00+01:00",
                        "why",
                        "A clock was set"));
    }

    // it was done at 09:00
    private void wrong() {
        spell("07:50");
        plant.bondAt("13:00", "wrong", "V1");
        plant.bondAt("14:30", "late", "V1");
    }

    @Test
    void aBondOfTheMorningThatIsDatedInTheAfternoonIsPossibleForBothLots() {
        wrong();
        assertThat(asked.lot("A").ever()).containsEntry("wrong", POSSIBLE).containsKey("early");
        assertThat(asked.lot("B").ever()).containsEntry("wrong", POSSIBLE).containsKey("late");
        assertThat(asked.unit("RCV", "wrong").ever())
                .containsEntry("A", POSSIBLE)
                .containsEntry("B", POSSIBLE);
    }

    @Test
    void whatIsProvenBeforeAndBehindTheSpellStaysAsItWas() {
        spell("12:30");
        plant.bondAt("13:00", "wrong", "V1");
        plant.bondAt("14:30", "late", "V1");
        assertThat(asked.lot("A").ever()).isEqualTo(Map.of("early", CERTAIN));
        assertThat(asked.lot("B").ever()).isEqualTo(Map.of("wrong", CERTAIN, "late", CERTAIN));
    }

    @Test
    void withoutASpellTheTimeCounts() {
        plant.bondAt("13:00", "wrong", "V1");
        assertThat(asked.lot("A").ever()).doesNotContainKey("wrong");
        assertThat(asked.lot("B").ever()).containsEntry("wrong", CERTAIN);
    }

    @Test
    void aWindowOfAScopeTakesInWhatMayHaveBeenInIt() {
        wrong();
        Window morning = new Window(Plant.at("08:00"), Plant.at("11:00"));
        assertThat(asked.scope(new Scope.Station("BOND", morning)).ever()).containsKey("wrong");
        assertThat(asked.scope(new Scope.Position("BOND", "V1", morning)).ever())
                .containsKey("wrong")
                .doesNotContainKeys("early", "late");
    }

    @Test
    void aSpellChangesNoAnswerBeforeIt() {
        plant.bondAt("13:00", "wrong", "V1");
        AnswerHead before = asked.lot("A").head();
        Map<String, Certainty> ever = asked.lot("A").ever();
        spell("07:50");
        assertThat(asked.lot("A").ever()).isNotEqualTo(ever).containsEntry("wrong", POSSIBLE);
        assertThat(asked.asKnownAt(Objects.requireNonNull(before.question().cutoff()))
                        .lot("A")
                        .ever())
                .isEqualTo(ever);
        assertThat(traces.ask(before.question())).isEqualTo(before);
    }

    @Test
    void aRestoredDatabaseGivesTheSameAnswers() throws IOException {
        wrong();
        AnswerHead before = asked.lot("A").head();
        ByteArrayOutputStream journal = new ByteArrayOutputStream();
        exports.write(journal);
        TestDatabase.beginAgain(context);
        restores.run(new ByteArrayInputStream(journal.toByteArray()), count -> {});
        assertThat(traces.ask(before.question())).isEqualTo(before);
    }

    @Test
    void whatLeftAtATimeThatIsNotProvenMayHaveLeftWithWhatWasInItThen() {
        plant.birth("2 06:00", "WALL", "w1");
        plant.bondWithLot("07:40", "late", "A");
        plant.install("08:00", "RCV late", "WALL w1", "1");
        plant.remove("12:00", "RCV late", "WALL w1");
        spell("07:50");
        plant.ship("13:00", "S-1", "Site North", "WALL w1");
        assertThat(asked.lot("A").atShipment()).containsKeys("late", "w1");
    }
}
