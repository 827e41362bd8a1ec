package dev.sunthread.access.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;

import dev.sunthread.access.AccessLog;
import dev.sunthread.access.Qualifications;
import dev.sunthread.access.Role;
import dev.sunthread.access.people.People;
import dev.sunthread.testing.KnownPeople;
import dev.sunthread.testing.SignedInAs;
import dev.sunthread.testing.SunthreadTest;
import java.net.URI;
import java.time.OffsetDateTime;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

/** What an administrator does to people. */
@SunthreadTest
class PeoplePageTests {

    @Autowired
    ApplicationContext context;

    @Autowired
    People people;

    @Autowired
    Qualifications qualifications;

    @Autowired
    AccessLog log;

    @Autowired
    MockMvc pages;

    @BeforeEach
    void thereAreAnAdministratorAndAnOperator() {
        KnownPeople known = new KnownPeople(context);
        known.add("ad-1", Role.ADMINISTRATOR);
        known.add("op-1", Role.OPERATOR);
    }

    @Test
    void addsAPersonAndShowsAOneTimePasswordOnce() throws Exception {
        send("/people", Map.of("mark", "qe-1", "name", "Ines", "signIn", "ines", "roles", "QUALITY"))
                .andExpect(redirectedUrl("/person?mark=qe-1"));
        send("/person/password", Map.of("mark", "qe-1"))
                .andExpect(content().string(containsString("This is shown once")));
        pages.perform(get("/person").param("mark", "qe-1"))
                .andExpect(content().string(not(containsString("This is shown once"))));
        assertThat(people.marked("qe-1").mustChange()).isTrue();
    }

    @Test
    void keepsWhatWasTypedBesideWhatIsWrong() throws Exception {
        send("/people", Map.of("mark", "no name!", "name", "Ines", "roles", "QUALITY"))
                .andExpect(content().string(containsString("The mark is not one")))
                .andExpect(content().string(containsString("value=\"Ines\"")));
        send("/people", Map.of("mark", "op-1", "name", "Ines", "roles", "QUALITY"))
                .andExpect(content().string(containsString("no mark is given twice")));
        send("/people", Map.of("mark", "qe-1", "name", "Ines"))
                .andExpect(content().string(containsString("Tick at least one role")));
        send("/people", Map.of("mark", "qe-1", "name", "Ines", "signIn", "OP-1", "roles", "QUALITY"))
                .andExpect(content().string(containsString("Somebody signs in as OP-1 already")));
        assertThat(people.find("qe-1")).isEmpty();
    }

    @Test
    void forgetsWhoAPersonWasAndKeepsTheMark() throws Exception {
        send("/person/blanked", Map.of("mark", "op-1", "repeated", "op-2"))
                .andExpect(content().string(containsString("The mark typed again is not op-1")));
        send("/person/blanked", Map.of("mark", "op-1", "repeated", "op-1"));
        assertThat(people.marked("op-1"))
                .matches(person -> person.name() == null && person.signIn() == null && !person.hasPassword())
                .matches(person -> person.blocked() && person.badgeEnding() == null);
        pages.perform(get("/people")).andExpect(content().string(not(containsString("Person op-1"))));
        send("/people", Map.of("mark", "op-1", "name", "Another", "roles", "OPERATOR"))
                .andExpect(content().string(containsString("no mark is given twice")));
    }

    @Test
    void keepsAtLeastOneAdministrator() throws Exception {
        send("/person/blocked", Map.of("mark", "ad-1", "blocked", "true"))
                .andExpect(content().string(containsString("Nobody else could administer then")));
        send("/person", Map.of("mark", "ad-1", "name", "A", "roles", "AUDITOR"))
                .andExpect(content().string(containsString("Nobody else could administer then")));
        assertThat(people.marked("ad-1").roles()).containsExactly(Role.ADMINISTRATOR);
    }

    @Test
    void givesEachBadgeToOnePersonAndTakesNoEasyPin() throws Exception {
        send("/person/badge", Map.of("mark", "op-1", "badge", "BADGE-ad-1"))
                .andExpect(content().string(containsString("Somebody has this badge")));
        for (String easy : new String[] {"111111", "123456", "987654"}) {
            send("/person/pin", Map.of("mark", "op-1", "pin", easy))
                    .andExpect(content().string(containsString("anybody would try")));
        }
        send("/person/pin", Map.of("mark", "op-1", "pin", "12"))
                .andExpect(content().string(containsString("Give 6 to 12 digits")));
    }

    @Test
    void givesAndWithdrawsQualifications() throws Exception {
        send("/person/qualifications", Map.of("mark", "op-1", "operation", "bond", "evidence", "trained by qe-1"))
                .andExpect(content().string(containsString("trained by qe-1")));
        OffsetDateTime soon = OffsetDateTime.now().plusMinutes(1);
        assertThat(qualifications.covers("op-1", "bond", soon)).isTrue();
        assertThat(qualifications.covers("op-1", "bond", soon.minusDays(1))).isFalse();
        assertThat(qualifications.covers("op-1", "coat", soon)).isFalse();
        long id = qualifications.of("op-1").get(0).id();
        send("/person/qualifications/withdrawn", Map.of("mark", "op-1", "id", String.valueOf(id)));
        assertThat(qualifications.covers("op-1", "bond", soon)).isFalse();
        assertThat(log.latest(0, 9))
                .extracting(AccessLog.Line::word)
                .startsWith("qualification-withdrawn", "qualification-given");
    }

    @Test
    @SignedInAs(Role.AUDITOR)
    void showsAnAuditorEverythingAndNothingToChange() throws Exception {
        for (String page : new String[] {"/people", "/person?mark=op-1", "/tokens", "/access-log"}) {
            String shown = pages.perform(get(page)).andReturn().getResponse().getContentAsString();
            assertThat(shown.substring(shown.indexOf("<main")))
                    .contains("</h1>")
                    .doesNotContain("method=\"post\"");
        }
    }

    @Test
    @SignedInAs(Role.OPERATOR)
    void tellsWhoIsRefusedWhatIsMissingAndWhomToAsk() throws Exception {
        pages.perform(get("/people"))
                .andExpect(content().string(containsString("see people, machines and the access log")))
                .andExpect(content().string(containsString("with the role: operator")))
                .andExpect(content().string(containsString("Ask somebody with the role: auditor, administrator")));
    }

    @Test
    void listsTheAccessLogAsAFileAndNotesThat() throws Exception {
        pages.perform(get("/access-log").param("format", "csv"))
                .andExpect(content().string(containsString("person-added")));
        assertThat(log.latest(0, 1).get(0))
                .matches(line -> line.word().equals("exported") && "tester".equals(line.actor()));
    }

    /** Sends a form and shows the page that it leads to. */
    private ResultActions send(String form, Map<String, String> fields) throws Exception {
        var request = post(form);
        fields.forEach(request::param);
        ResultActions answer = pages.perform(request);
        var response = answer.andReturn().getResponse();
        String to = response.getRedirectedUrl();
        if (to == null || form.equals("/people")) {
            return answer;
        }
        var page = get(URI.create(to));
        return pages.perform(response.getCookies().length == 0 ? page : page.cookie(response.getCookies()));
    }
}
