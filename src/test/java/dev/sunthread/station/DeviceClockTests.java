package dev.sunthread.station;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.genealogy.AnswerLine;
import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.LineFilter;
import dev.sunthread.genealogy.Root;
import dev.sunthread.genealogy.TraceQuestion;
import dev.sunthread.genealogy.Traces;
import dev.sunthread.genealogy.Way;
import dev.sunthread.ledger.Door;
import dev.sunthread.station.contact.PageContacts;
import dev.sunthread.station.contact.ScanOrder;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The clock of a device is set while its page keeps scans; what contacts prove of their times counts. */
@SunthreadTest
class DeviceClockTests {

    private static final UUID PAGE = UUID.fromString("6ba7b811-9dad-41d1-80b4-00c04fd430c8");
    private static final OffsetDateTime HEARD = Plant.at("07:50");
    private static final OffsetDateTime BACK = Plant.at("14:00");

    @Autowired
    Door door;

    @Autowired
    Bench bench;

    @Autowired
    ScanOrder order;

    @Autowired
    PageContacts contacts;

    @Autowired
    Traces traces;

    @Autowired
    JdbcClient jdbc;

    @BeforeEach
    void lotsThatChangedAtNoon() {
        ShopFloor floor = ShopFloor.released(door);
        floor.plant().birth("07:10", "REC", "R0001");
        loads("A-1", "07:30");
        contacts.opened(PAGE, "GLUE", "op-1");
        contacts.heard(PAGE, 0, false, HEARD);
        loads("A-2", "12:00");
    }

    private void loads(String lot, String time) {
        bench.scan("GLUE", "op-2", new Scan(lot + "-lot", lot, Plant.at(time), false));
        bench.scan("GLUE", "op-2", new Scan(lot + "-at", "V1", Plant.at(time).plusSeconds(1), false));
    }

    private Scan told(int number, String text, OffsetDateTime at) {
        Scan scan = new Scan("kept-" + number, text, at, true, new Scan.Place(PAGE, number));
        return scan.within(new Scan.Within(null, BACK, at));
    }

    private Scan takes(Scan scan) {
        Scan ordered = order.behindTheLast("GLUE", "op-1", scan);
        bench.scan("GLUE", "op-1", ordered);
        return ordered;
    }

    private void bonded(OffsetDateTime at) {
        takes(told(1, "R0001", at));
        takes(told(2, "C-1", at.plusSeconds(9)));
    }

    private List<String> reached(String lot, Certainty certainty) {
        List<AnswerLine> lines = new ArrayList<>();
        traces.each(
                traces.ask(new TraceQuestion(Way.FORWARD, new Root.OfLot(lot), null, null, false))
                        .id(),
                LineFilter.ALL,
                lines::add);
        return lines.stream()
                .filter(line -> line.ever() == certainty && line.level().equals("receiver"))
                .map(AnswerLine::name)
                .toList();
    }

    private int count(String sql) {
        return jdbc.sql(sql).query(Integer.class).single();
    }

    private int findings() {
        return count("SELECT count(*) FROM inbox.finding WHERE rule = 'told-times-lie-within-what-is-proven'");
    }

    private int spells() {
        return count("SELECT count(*) FROM quality.unproven_time");
    }

    @Test
    void aClockThatIsSetOnMissesNothingAndIsAFinding() {
        bonded(Plant.at("9 12:00"));
        assertThat(reached("A-1", Certainty.POSSIBLE)).containsExactly("R0001");
        assertThat(reached("A-2", Certainty.POSSIBLE)).containsExactly("R0001");
        assertThat(findings()).isEqualTo(1);
        assertThat(spells()).isEqualTo(1);
    }

    @Test
    void aClockThatIsSetBackALittleMissesNothing() {
        bonded(Plant.at("12:30"));
        assertThat(reached("A-1", Certainty.POSSIBLE)).containsExactly("R0001");
        assertThat(reached("A-2", Certainty.CERTAIN)).isEmpty();
        assertThat(findings()).isZero();
    }

    @Test
    void aClockThatIsSetBackFarTellsOfWhatIsToComeAndIsAFinding() {
        bonded(Plant.at("11 04:00"));
        assertThat(reached("A-1", Certainty.POSSIBLE)).containsExactly("R0001");
        assertThat(findings()).isEqualTo(1);
    }

    @Test
    void aPageThatStayedOpenProvesItsTimes() {
        takes(new Scan("kept-1", "R0001", Plant.at("09:00"), true, new Scan.Place(PAGE, 1)));
        takes(new Scan("kept-2", "C-1", Plant.at("09:01"), true, new Scan.Place(PAGE, 2)));
        assertThat(reached("A-1", Certainty.CERTAIN)).containsExactly("R0001");
        assertThat(spells()).isZero();
    }

    @Test
    void aScanIsNotBeforeTheProvenOneOfItsPageThatItCameBehind() {
        takes(new Scan("kept-1", "R0001", Plant.at("13:00"), true, new Scan.Place(PAGE, 1)));
        Scan second = takes(told(2, "C-1", Plant.at("08:00")));
        assertThat(Objects.requireNonNull(second.within()).from()).isEqualTo(Plant.at("13:00"));
        assertThat(second.at()).isAfter(Plant.at("13:00")).isBefore(Plant.at("13:01"));
        assertThat(reached("A-1", Certainty.CERTAIN)).isEmpty();
        assertThat(findings()).isEqualTo(1);
    }

    @Test
    void theSpellIsKnownWhereverWhatItDatesIs() {
        bonded(Plant.at("12:30"));
        assertThat(count("""
                        SELECT count(*) FROM production.step s WHERE NOT EXISTS (
                          SELECT FROM quality.unproven_time x WHERE x.entry < s.entry
                            AND s.started_at BETWEEN x.since AND x.until)
                        """)).isZero();
    }

    @Test
    void whatNoContactProvesMayHaveBeenSinceEver() {
        Scan scan = new Scan("lost", "R0001", BACK, true, new Scan.Place(UUID.randomUUID(), 1));
        Scan ordered = takes(scan.within(new Scan.Within(null, BACK, Plant.at("13:00"))));
        assertThat(ordered.at()).isEqualTo(Plant.at("13:00"));
        takes(new Scan("cell", "C-1", Plant.at("13:01"), true));
        assertThat(reached("A-1", Certainty.POSSIBLE)).containsExactly("R0001");
    }
}
