package dev.sunthread.station;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.security.test.web.servlet.request.SecurityMockMvcRequestPostProcessors.authentication;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;

import dev.sunthread.access.Caller;
import dev.sunthread.access.Role;
import dev.sunthread.access.signin.SignedIn;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.KnownPeople;
import dev.sunthread.testing.SignedInAs;
import dev.sunthread.testing.SunthreadTest;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;
import org.springframework.test.web.servlet.request.RequestPostProcessor;

/** A label that can't be read, typed by two persons and taken as a scan. */
@SunthreadTest
class DamagedLabelTests {

    private static final Pattern SCAN_ID = Pattern.compile("name=\"id\" value=\"(typed-[0-9a-f-]+)\\.scan\"");

    @Autowired
    Door door;

    @Autowired
    MockMvc pages;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    ApplicationContext context;

    private ShopFloor floor;

    @BeforeEach
    void release() throws Exception {
        floor = ShopFloor.released(door);
        KnownPeople people = new KnownPeople(context);
        people.add("op-1", Role.OPERATOR);
        people.add("op-2", Role.OPERATOR);
        people.add("au-1", Role.AUDITOR);
        pages.perform(get("/work/damaged").with(operator()));
    }

    private static RequestPostProcessor operator() {
        return authentication(
                new SignedIn(Caller.person("op-1", "Operator", Set.of(Role.OPERATOR), Caller.Means.BADGE, "GLUE")));
    }

    private ResultActions say(MockHttpServletRequestBuilder asked, String said) throws Exception {
        return pages.perform(asked.param("said", said).with(operator()));
    }

    private ResultActions say(String said) throws Exception {
        return say(post("/work/damaged"), said);
    }

    private ResultActions confirm(String person, String pin) throws Exception {
        say("BADGE-" + person).andExpect(content().string(containsString("Type your PIN")));
        return say(post("/work/damaged").param("badge", "BADGE-" + person), pin);
    }

    private void scan(String id, String text) throws Exception {
        pages.perform(post("/work").param("id", id).param("text", text).with(operator()))
                .andExpect(redirectedUrl("/work"));
    }

    private int count(String sql) {
        return jdbc.sql(sql).query(Integer.class).single();
    }

    @Test
    void theStepThatFollowsNamesWhoTypedItAndWhoConfirmed() throws Exception {
        say("R0001").andExpect(content().string(not(containsString("R0001"))));
        confirm("op-2", KnownPeople.PIN).andExpect(content().string(not(containsString("R0001"))));
        String page = say("R0001")
                .andExpect(content().string(containsString("Typed by op-1, confirmed by op-2")))
                .andReturn()
                .getResponse()
                .getContentAsString();
        Matcher id = SCAN_ID.matcher(page);
        assertThat(id.find()).isTrue();
        scan(id.group(1) + ".scan", "R0001");
        scan("s-2", "C-1");
        scan("s-3", "A-1");
        assertThat(jdbc.sql("""
                                SELECT s.kind || ' ' || t.typed_by || ' ' || t.confirmed_by FROM inbox.typed_label_use u
                                JOIN inbox.typed_label t ON t.entry = u.typed JOIN ledger.entry s ON s.number = u.entry
                                """).query(String.class).list()).containsExactly("step op-1 op-2");
        pages.perform(get("/unit").param("item", "REC").param("serial", "R0001").with(operator()))
                .andExpect(content().string(containsString("Typed by hand")))
                .andExpect(content().string(containsString("s-3")));
    }

    @Test
    void nothingIsRecordedIfTheTwoDiffer() throws Exception {
        say("R0001");
        confirm("op-2", KnownPeople.PIN);
        say("R0007").andExpect(content().string(containsString("did not type the same")));
        assertThat(count("SELECT count(*) FROM ledger.entry WHERE kind = 'typed-label'"))
                .isZero();
        say("R0001").andExpect(content().string(containsString("Another person: scan your badge")));
    }

    @Test
    void theOtherHasToBeAnotherWhoMayWork() throws Exception {
        say("R0001");
        confirm("op-1", KnownPeople.PIN).andExpect(content().string(containsString("badge of who is signed in")));
        confirm("op-2", "000000").andExpect(content().string(containsString("fit")));
        confirm("au-1", KnownPeople.PIN).andExpect(content().string(containsString("au-1 may not record work")));
        confirm("op-2", KnownPeople.PIN).andExpect(content().string(containsString("Type what the label says")));
        assertThat(count("SELECT count(*) FROM access.log WHERE what = 'SIGN_IN_REFUSED'"))
                .isEqualTo(1);
    }

    @Test
    void saysWhatTheTextResembles() throws Exception {
        floor.plant().birth("08:00", "REC", "ROO01");
        say("R0001");
        confirm("op-2", KnownPeople.PIN);
        say("R0001")
                .andExpect(content().string(containsString("It resembles others")))
                .andExpect(content().string(containsString("REC ROO01")))
                .andExpect(content().string(containsString("0 and O")));
    }

    @Test
    void comesAwayEmptyHandedFromADeskWithoutAStation() throws Exception {
        pages.perform(get("/work/damaged")).andExpect(content().string(not(containsString("name=\"said\""))));
    }

    @Test
    @SignedInAs(Role.AUDITOR)
    void isNotForWhoMayNotWork() throws Exception {
        pages.perform(get("/work/damaged"))
                .andExpect(org.springframework.test.web.servlet.result.MockMvcResultMatchers.status()
                        .isForbidden());
    }
}
