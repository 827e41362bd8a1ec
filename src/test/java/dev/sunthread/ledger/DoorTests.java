package dev.sunthread.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.body.Unreadable;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What the door promises, on a real database. */
@SunthreadTest
class DoorTests {

    @Autowired
    Door door;

    @Autowired
    Sealer sealer;

    @Autowired
    JdbcClient jdbc;

    Plant plant;

    @BeforeEach
    void released() {
        plant = Plant.released(door);
    }

    @Test
    void recordsAnEnvelopeOnceHoweverOftenItIsSent() {
        Envelope birth = plant.envelope("birth", "08:00", Map.of("units", List.of(unit("RCV", "1"))));
        assertThat(door.accept(birth, Manner.TOLD).isNew()).isTrue();
        assertThat(door.accept(birth, Manner.TOLD).isNew()).isFalse();
        assertThat(count("production.birth")).isEqualTo(1);
    }

    @Test
    void refusesAnotherContentUnderAKnownId() {
        plant.birth("08:00", "RCV", "1");
        Envelope other = Envelope.of(
                new EnvelopeHead(plant.lastId(), "birth", 1, Plant.at("08:00"), "op-2", "test"),
                plant.envelope("birth", "08:00", Map.of("units", List.of(unit("RCV", "2"))))
                        .body());
        assertThatThrownBy(() -> door.accept(other, Manner.TOLD))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining("recorded before with other content");
    }

    @Test
    void givesConsecutivePositionsToWhatIsCommitted() {
        plant.birth("08:00", "RCV", "1");
        plant.birth("08:01", "RCV", "2");
        long last = sealer.seal();
        assertThat(last).isEqualTo(count("ledger.entry")).isEqualTo(count("ledger.position"));
        assertThat(count("ledger.unsealed")).isZero();
    }

    @Test
    void refusesToDoWhatItAcceptsWithAFindingWhenTold() {
        Map<String, Object> body = Map.of("lot", "UNKNOWN-1", "station", "BOND", "position", "V1");
        assertThatThrownBy(() -> plant.say("charge", "08:00", body, Manner.DO))
                .isInstanceOf(Refused.class)
                .hasMessage("Lot UNKNOWN-1 has no receipt");
        assertThat(count("materials.charge")).isZero();
        assertThat(plant.say("charge", "08:00", body).findings()).hasSize(1);
        assertThat(count("materials.charge")).isEqualTo(1);
        assertThat(count("inbox.finding")).isEqualTo(1);
    }

    @Test
    void findsWhatIsToldToHappenInTheFutureAlsoByACorrection() {
        OffsetDateTime farAhead = Plant.at("08:00").plusYears(70).plusSeconds(1);
        Map<String, Object> birth = Map.of("units", List.of(unit("RCV", "1")));
        EnvelopeHead head = new EnvelopeHead("far", "birth", 1, farAhead, "op-2", "test");
        Envelope far = Envelope.of(head, plant.envelope("birth", "08:00", birth).body());
        assertThat(door.accept(far, Manner.TOLD).findings())
                .extracting(RaisedFinding::rule)
                .containsExactly("happening-is-not-in-the-future");
        Map<String, Object> corrected = Map.of(
                "entry",
                "far",
                "why",
                "wrong year",
                "occurredAt",
                farAhead.plusDays(1).toString(),
                "body",
                birth);
        assertThat(plant.say("correction", "08:10", corrected).findings())
                .extracting(RaisedFinding::rule)
                .contains("happening-is-not-in-the-future");
    }

    @Test
    void believesACorrectionAndNoLongerWhatItCorrects() {
        plant.receipt("07:00", "A-1", "ADH");
        plant.receipt("07:00", "A-2", "ADH");
        plant.charge("08:00", "A-1", "V1");
        plant.correct("08:30", plant.lastId(), Map.of("lot", "A-2", "station", "BOND", "position", "V1"));
        assertThat(jdbc.sql(
                                "SELECT l.number FROM materials.loaded d JOIN materials.lot l ON l.id = d.lot WHERE d.during @> now()")
                        .query(String.class)
                        .list())
                .containsExactly("A-2");
    }

    @Test
    void aCorrectionOfACorrectionKeepsTheTimeOfTheHappening() {
        plant.receipt("07:00", "A-1", "ADH");
        plant.charge("08:00", "A-1", "V1");
        plant.correct("09:00", plant.lastId(), Map.of("lot", "A-1", "station", "BOND", "position", "V2"));
        plant.correct("10:00", plant.lastId(), Map.of("lot", "A-1", "station", "BOND", "position", "V1"));
        assertThat(jdbc.sql("SELECT lower(during) FROM materials.loaded")
                        .query(java.time.OffsetDateTime.class)
                        .single())
                .isEqualTo(Plant.at("08:00"));
    }

    @Test
    void nothingWritesHistoryBesideTheDoor() {
        List<String> history =
                jdbc.sql("""
                        SELECT DISTINCT event_object_schema || '.' || event_object_table
                        FROM information_schema.triggers WHERE trigger_name = 'through_the_door'
                        """).query((row, number) -> row.getString(1)).list();
        assertThat(history).hasSizeGreaterThan(20);
        for (String table : history) {
            assertThatThrownBy(() -> jdbc.sql("INSERT INTO " + table + " (entry) VALUES (1)")
                            .update())
                    .hasMessageContaining("through the door only");
            assertThatThrownBy(() -> jdbc.sql("TRUNCATE " + table + " CASCADE").update())
                    .hasMessageContaining("only appended to");
        }
    }

    @Test
    void neitherChangesNorTakesAwayWhatIsRecorded() {
        plant.birth("08:00", "RCV", "1");
        for (String change : List.of(
                "UPDATE production.birth SET born_at = now()",
                "DELETE FROM production.birth",
                "UPDATE ledger.entry SET actor = 'x'",
                "DELETE FROM ledger.entry")) {
            assertThatThrownBy(() -> jdbc.sql(change).update()).hasMessageContaining("only appended to");
        }
    }

    private static Map<String, Object> unit(String item, String serial) {
        return Map.of("item", item, "serial", serial);
    }

    private long count(String table) {
        return jdbc.sql("SELECT count(*) FROM " + table).query(Long.class).single();
    }
}
