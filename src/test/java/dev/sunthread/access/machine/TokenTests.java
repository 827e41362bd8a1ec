package dev.sunthread.access.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.sunthread.access.Right;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.test.context.TestSecurityContextHolder;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/** What machines may do with their tokens, and whose word it is in the ledger. */
@SunthreadTest
class TokenTests {

    private static final String BIRTH = """
            {"id":"%s","kind":"birth","version":1,"occurredAt":"2026-03-10T08:00:00+01:00","actor":"op-7","source":"BOND",\
            "body":{"units":[{"item":"RCV","serial":"%s"}]}}""";

    @Autowired
    Tokens tokens;

    @Autowired
    Door door;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    MockMvc http;

    @BeforeEach
    void definitionsAreReleased() {
        Plant.released(door);
    }

    @Test
    void recordsInTheNameOfTheMachineWhateverItSays() throws Exception {
        String secret = token("if-1", null, Right.WORK);
        http.perform(sent("do", BIRTH.formatted("b-1", "R1"), secret)).andExpect(status().isCreated());
        http.perform(sent("told", BIRTH.formatted("b-2", "R2"), secret)).andExpect(status().isOk());
        assertThat(whoSaid("b-1")).isEqualTo("if-1 by if-1");
        assertThat(whoSaid("b-2")).isEqualTo("if-1 by if-1");
        // sent again as it was first sent
        http.perform(sent("do", BIRTH.formatted("b-1", "R1"), secret))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.isNew").value(false));
    }

    @Test
    void keepsWhoAStationSaysDidItAndNotesTheStation() throws Exception {
        String secret = token("st-bond", "BOND", Right.WORK);
        http.perform(sent("told", BIRTH.formatted("b-1", "R1"), secret)).andExpect(status().isOk());
        assertThat(whoSaid("b-1")).isEqualTo("op-7 by st-bond");
        http.perform(sent("do", BIRTH.formatted("b-2", "R2"), secret)).andExpect(status().isCreated());
        assertThat(whoSaid("b-2")).isEqualTo("st-bond by st-bond");
    }

    @Test
    void recordsInTheNameOfThePersonWhoIsSignedIn() throws Exception {
        http.perform(post("/api/v1/envelopes/do")
                        .contentType(MediaType.APPLICATION_JSON)
                        .content(BIRTH.formatted("b-1", "R1")))
                .andExpect(status().isCreated());
        assertThat(whoSaid("b-1")).isEqualTo("tester by tester");
    }

    @Test
    void keepsTheActorsOfAnImportAndNotesWhoImported() throws Exception {
        String secret = token("if-erp", null, Right.IMPORT);
        http.perform(post("/api/v1/journal/import")
                        .header("Authorization", "Bearer " + secret)
                        .content(BIRTH.formatted("b-1", "R1")))
                .andExpect(content().string(containsString("\"accepted\":1")));
        assertThat(whoSaid("b-1")).isEqualTo("op-7 by if-erp");
    }

    @Test
    void mayDoNoMoreThanWhatWasTicked() throws Exception {
        String secret = token("if-1", null, Right.WORK);
        nobodyIsSignedIn();
        http.perform(get("/api/v1/journal/export").header("Authorization", "Bearer " + secret))
                .andExpect(status().isForbidden())
                .andExpect(jsonPath("$.detail").value(containsString("which the token of if-1 does not have")))
                .andExpect(jsonPath("$.remedy").value(containsString("Ask an administrator for a token")));
        http.perform(sent("do", BIRTH.formatted("i-1", "R1").replace("birth", "item"), secret))
                .andExpect(status().isForbidden());
        http.perform(get("/account").header("Authorization", "Bearer " + secret))
                .andExpect(status().isForbidden());
    }

    @Test
    void isWorthNothingOnceRevoked() throws Exception {
        String secret = token("if-1", null, Right.WORK);
        tokens.revoke(tokens.all().get(0).id());
        nobodyIsSignedIn();
        for (String worthless : List.of(secret, "sun_made-up", "")) {
            http.perform(sent("do", BIRTH.formatted("b-1", "R1"), worthless))
                    .andExpect(status().isUnauthorized())
                    .andExpect(header().string("WWW-Authenticate", "Bearer"))
                    .andExpect(jsonPath("$.remedy").isNotEmpty());
        }
    }

    @Test
    void isKeptAsAHashOnly() {
        String secret = token("if-1", null, Right.WORK);
        assertThat(secret).startsWith("sun_").hasSizeGreaterThan(40);
        assertThat(jdbc.sql("SELECT t::text FROM access.token t")
                        .query(String.class)
                        .single())
                .doesNotContain(secret);
    }

    @Test
    void givesNoMarkTwiceEvenToAMachineAfterAPerson() throws Exception {
        token("x-1", null, Right.WORK);
        http.perform(post("/people").param("mark", "x-1").param("name", "X").param("roles", "OPERATOR"))
                .andExpect(content().string(containsString("no mark is given twice")));
    }

    @Test
    void isDescribedInTheInterface() throws Exception {
        http.perform(get("/v3/api-docs"))
                .andExpect(jsonPath("$.components.securitySchemes.token.scheme").value("bearer"))
                .andExpect(jsonPath("$.security[0].token").isArray());
    }

    private String token(String mark, @Nullable String station, Right right) {
        return tokens.make(new TokenWords(mark, "a test", station, Set.of(right), null));
    }

    private static MockHttpServletRequestBuilder sent(String manner, String envelope, String secret) {
        return post("/api/v1/envelopes/" + manner)
                .header("Authorization", "Bearer " + secret)
                .contentType(MediaType.APPLICATION_JSON)
                .content(envelope);
    }

    private static void nobodyIsSignedIn() {
        TestSecurityContextHolder.clearContext();
    }

    private String whoSaid(String id) {
        return jdbc.sql("SELECT actor || ' by ' || recorded_by FROM ledger.entry WHERE id = ?")
                .param(id)
                .query(String.class)
                .single();
    }
}
