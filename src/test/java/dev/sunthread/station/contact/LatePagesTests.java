package dev.sunthread.station.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import com.jayway.jsonpath.JsonPath;
import dev.sunthread.genealogy.AnswerHead;
import dev.sunthread.genealogy.Root;
import dev.sunthread.genealogy.TraceQuestion;
import dev.sunthread.genealogy.Traces;
import dev.sunthread.genealogy.Way;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Envelope;
import dev.sunthread.ledger.EnvelopeHead;
import dev.sunthread.ledger.Manner;
import dev.sunthread.quality.StationBehind;
import dev.sunthread.quality.StationsBehind;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SignedInAs;
import dev.sunthread.testing.SunthreadTest;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;
import tools.jackson.databind.node.JsonNodeFactory;

/** A page that is out of reach makes its station one that answers name, until it is heard and keeps nothing. */
@SunthreadTest
class LatePagesTests {

    private static final UUID PAGE = UUID.fromString("6ba7b810-9dad-41d1-80b4-00c04fd430c8");

    @Autowired
    Door door;

    @Autowired
    PageContacts contacts;

    @Autowired
    LatePages pages;

    @Autowired
    StationsBehind behind;

    @Autowired
    Traces traces;

    @Autowired
    MockMvc http;

    @Autowired
    JdbcClient jdbc;

    private Plant plant;

    @BeforeEach
    void openedAtBond() {
        plant = Plant.released(door);
        plant.receipt("07:00", "A-17", "ADH", "F-9");
        contacts.opened(PAGE, "BOND", "op-1");
        contacts.heard(PAGE, 0, false, null);
    }

    private void anHourLater() {
        jdbc.sql("UPDATE station.page SET caught_up_at = caught_up_at - interval '1 h'")
                .update();
        pages.look();
    }

    private AnswerHead asked(@Nullable Long cutoff) {
        return traces.ask(new TraceQuestion(Way.FORWARD, new Root.OfLot("A-17"), cutoff, null, false));
    }

    private List<String> named(@Nullable Long cutoff) {
        return asked(cutoff).stationsBehind().stream()
                .map(StationBehind::station)
                .toList();
    }

    @Test
    void aSilentPageIsNamedInAnswersUntilItIsHeardAndKeepsNothing() {
        pages.look();
        assertThat(named(null)).isEmpty();
        anHourLater();
        pages.look();
        assertThat(named(null)).containsExactly("BOND");
        AnswerHead then = asked(null);
        contacts.heard(PAGE, 3, false, null);
        pages.look();
        assertThat(named(null)).containsExactly("BOND");
        contacts.heard(PAGE, 0, false, null);
        pages.look();
        assertThat(named(null)).isEmpty();
        assertThat(asked(then.question().cutoff()).stationsBehind()).isEqualTo(then.stationsBehind());
    }

    @Test
    void aPageThatClosedWithNothingKeptIsNotMissedButOneThatKeptSomethingIs() {
        contacts.heard(PAGE, 0, true, null);
        anHourLater();
        assertThat(behind.now()).isEmpty();
        contacts.heard(PAGE, 2, true, null);
        pages.look();
        assertThat(behind.now()).extracting(StationBehind::page).containsExactly(PAGE);
    }

    @Test
    void whatAPersonEndedIsNotSaidAgainOfAPageThatIsLost() {
        anHourLater();
        plant.say(
                "station-caught-up",
                "09:00",
                Map.of("entry", behind.now().get(0).entry(), "why", "The tablet broke; nothing was scanned after 8"));
        pages.look();
        assertThat(behind.now()).isEmpty();
    }

    @Test
    void whatAPersonSaidIsNotEndedByAPage() {
        var body = JsonNodeFactory.instance.objectNode();
        OffsetDateTime noticed = Plant.at("09:00");
        body.put("station", "BOND").put("since", "2026-03-10T08:00:00+01:00").put("why", "Steps are on paper");
        EnvelopeHead head = new EnvelopeHead("paper-1", "station-behind", 1, noticed, "qe-1", "page");
        door.accept(Envelope.of(head, body), Manner.DO);
        contacts.heard(PAGE, 0, false, null);
        pages.look();
        assertThat(behind.now()).extracting(StationBehind::entry).containsExactly("paper-1");
    }

    @Test
    @SignedInAs({})
    void aPageIsHeardWithoutASessionAndLearnsThatSomethingMustComeOff() throws Exception {
        plant.charge("08:00", "A-17", "V1");
        String before = heard();
        assertThat(heard()).isEqualTo(before);
        plant.say("hold", "08:30", Map.of("lots", List.of("A-17"), "reason", "Supplier's notice"));
        assertThat(heard()).isNotEqualTo(before);
        http.perform(post("/contact").param("page", UUID.randomUUID().toString()))
                .andExpect(status().isNotFound());
    }

    private String heard() throws Exception {
        MvcResult result = http.perform(post("/contact").param("page", PAGE.toString()))
                .andExpect(status().isOk())
                .andReturn();
        assertThat(result.getRequest().getSession(false)).isNull();
        return String.valueOf((Object) JsonPath.read(result.getResponse().getContentAsString(), "$.stops"));
    }
}
