package dev.sunthread.journal;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Door;
import dev.sunthread.production.Stays;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.TestDatabase;
import dev.sunthread.testing.Workshop;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What a restore remembers from one entry to the next never hides that it changed meanwhile. */
@SunthreadTest
class RestoredFindingsTests {

    @Autowired
    Door door;

    @Autowired
    Exports exports;

    @Autowired
    Restores restores;

    @Autowired
    Stays stays;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    ApplicationContext context;

    @Test
    void areTheSameWhenHoldsComeAndGo() throws IOException {
        Plant plant = Workshop.released(door).plant();
        plant.receipt("08:00", "A1", "ADH");
        plant.bondWithLot("08:10", "R1", "A1");
        plant.holdUnit("08:20", "RCV R1", "scratched");
        String hold = plant.lastId();
        plant.bondWithLot("08:30", "R1", "A1");
        plant.say("hold-release", "08:40", Map.of("entry", hold, "hold", 1, "why", "polished"));
        plant.bondWithLot("08:50", "R1", "A1");
        plant.say("hold", "09:00", Map.of("lots", List.of("A1"), "reason", "notice of the supplier"));
        plant.bondWithLot("09:10", "R2", "A1");
        plant.undo("09:20", plant.lastId());
        plant.holdUnit("09:30", "RCV R3", "scratched");
        String undone = plant.lastId();
        plant.bondWithLot("09:40", "R3", "A1");
        plant.undo("09:50", undone);
        plant.bondWithLot("09:55", "R3", "A1");
        assertThat(rules()).contains("unit-is-not-on-hold", "lot-is-not-on-hold");
        findingsStayTheSame();
    }

    @Test
    void areTheSameWhenBirthsScrappingsAndReceiptsComeAndGo() throws IOException {
        Workshop workshop = Workshop.released(door);
        Plant plant = workshop.plant();
        plant.bondWithLot("08:10", "R9", "A1");
        plant.birth("08:15", "RCV", "R9");
        String birth = plant.lastId();
        plant.receipt("08:20", "A1", "ADH");
        String receipt = plant.lastId();
        plant.bondWithLot("08:30", "R9", "A1");
        plant.undo("08:40", birth);
        plant.undo("08:41", receipt);
        plant.bondWithLot("08:50", "R9", "A1");
        plant.bondWithLot("09:00", "R1", "A1");
        workshop.scrap("09:10", "RCV R1");
        String scrapping = plant.lastId();
        plant.bondWithLot("09:20", "R1", "A1");
        plant.bondWithLot("09:05", "R1", "A1");
        plant.undo("09:30", scrapping);
        plant.bondWithLot("09:40", "R1", "A1");
        assertThat(rules()).contains("unit-is-born", "lot-is-received", "unit-is-not-scrapped");
        findingsStayTheSame();
    }

    @Test
    void areTheSameWhenRevisionsAndChecksFollowEachOther() throws IOException {
        Workshop workshop = Workshop.released(door);
        Plant plant = workshop.plant();
        workshop.step("08:10", "coat", "RCV R1");
        workshop.demandingRoute();
        workshop.step("08:20", "coat", "RCV R1");
        workshop.step("08:30", "weld", "RCV R1");
        plant.say(
                "route",
                "09:00",
                Map.of(
                        "item",
                        "RCV",
                        "revision",
                        "B",
                        "operations",
                        List.of(
                                Map.of("operation", "weld", "name", "Weld"),
                                Map.of("operation", "coat", "name", "Coat"))));
        workshop.step("08:40", "coat", "RCV R1");
        workshop.step("09:10", "weld", "RCV R1");
        workshop.step("09:20", "bond", "RCV R1");
        workshop.check("verification", "09:30", "RIG", "bad");
        workshop.pull("09:40", "P1", "RCV R1", "fail");
        workshop.pull("09:50", "P2", "RCV R1", "pass");
        workshop.pull("09:55", "P2", "RCV R2", "pass");
        assertThat(rules()).contains("operation-is-on-the-route", "equipment-was-good-at-its-last-check");
        findingsStayTheSame();
    }

    @Test
    void areTheSameWhenPlacesAndOperationsComeAndGo() throws IOException {
        Workshop workshop = Workshop.released(door);
        Plant plant = workshop.plant();
        workshop.demandingRoute();
        plant.remove("08:50", "RCV R1", "WALL W1");
        plant.install("08:40", "RCV R1", "WALL W1", "1");
        plant.install("09:00", "RCV R2", "WALL W1", "2");
        String first = plant.lastId();
        plant.install("09:10", "RCV R3", "WALL W1", "2");
        plant.install("08:55", "RCV R2", "WALL W2", "2");
        plant.undo("09:20", first);
        plant.install("09:30", "RCV R4", "WALL W1", "2");
        workshop.step("09:40", "coat", "RCV R5");
        workshop.step("09:35", "bond", "RCV R5");
        String bond = plant.lastId();
        workshop.step("09:45", "coat", "RCV R5");
        plant.undo("09:50", bond);
        workshop.step("09:55", "coat", "RCV R5");
        plant.install("10:00", "RCV R5", "WALL W2", "1");
        assertThat(rules())
                .contains(
                        "position-holds-one-thing",
                        "nothing-is-in-two-places",
                        "earlier-operations-are-done-before-the-next");
        findingsStayTheSame();
        assertThat(stays.differencesFromHistory()).isEmpty();
    }

    private void findingsStayTheSame() throws IOException {
        ByteArrayOutputStream export = new ByteArrayOutputStream();
        exports.write(export);
        List<Map<String, @Nullable Object>> findings = findings();
        List<Map<String, @Nullable Object>> holds = holds();
        TestDatabase.beginAgain(context);
        restores.run(Bytes.of(export.toString(java.nio.charset.StandardCharsets.UTF_8)), restored -> {});
        assertThat(findings()).isEqualTo(findings);
        assertThat(holds()).isEqualTo(holds);
    }

    private List<String> rules() {
        return findings().stream().map(row -> String.valueOf(row.get("rule"))).toList();
    }

    private List<Map<String, @Nullable Object>> findings() {
        return jdbc.sql("""
                        SELECT e.id, f.ordinal, f.rule, f.sentence, f.remedy,
                          (SELECT string_agg(s.kind || ' ' || s.subject, ', ' ORDER BY s.kind, s.subject)
                           FROM inbox.finding_subject s WHERE s.entry = f.entry AND s.ordinal = f.ordinal) AS about
                        FROM inbox.finding f JOIN ledger.entry e ON e.number = f.entry ORDER BY f.entry, f.ordinal
                        """).query().listOfRows();
    }

    private List<Map<String, @Nullable Object>> holds() {
        return jdbc.sql("""
                        SELECT e.id, h.ordinal, h.kind, h.subject, h.reason
                        FROM holds.hold h JOIN ledger.entry e ON e.number = h.entry ORDER BY h.entry, h.ordinal
                        """).query().listOfRows();
    }
}
