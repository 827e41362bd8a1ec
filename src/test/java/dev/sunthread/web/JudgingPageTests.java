package dev.sunthread.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.RawData;
import dev.sunthread.testing.RawData.Points;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.testing.Workshop;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.test.web.servlet.MockMvc;

/** Runs judged again, from asking to tracing what came out. A sweep of one ampere gives about 0.6 W. */
@SunthreadTest
class JudgingPageTests {

    @Autowired
    Door door;

    @Autowired
    MockMvc pages;

    private Workshop workshop;

    @BeforeEach
    void tested() {
        workshop = Workshop.released(door);
        workshop.plant().say("specification", "2 00:00", RawData.powerRevision("B", "0.5"));
        test("10:00", "T1", "RCV R1", 1.0);
        test("10:05", "T2", "RCV R2", 0.86);
        test("10:10", "T3", "RCV R3", 0.86);
        test("10:20", "T4", "RCV R3", 1.0);
        workshop.plant().say("specification", "20 00:00", RawData.powerRevision("C", "0.55"));
    }

    @Test
    void unitsThatWouldFailUnderANewLimitAreCountedListedAndTraced() throws Exception {
        String job = ask("of=test&code=PULL&revision=C");
        assertThat(text(job))
                .contains("4 of 4 runs", "passed failed 2 2 These", "passed passed 2 2 These")
                .contains("T2 RCV R2 RIG passed failed")
                .contains("Trace units whose last test is failed");
        assertThat(text(job + "&after=failed&table=lines&format=csv"))
                .contains("T2,", "T3,")
                .doesNotContain("T1,");
        String scope = "{\"of\": \"test-verdict\", \"specification\": \"PULL\", \"revision\": \"C\"}";
        assertThat(body(get("/api/v1/traces").param("way", "forward").param("scope", scope)))
                .contains("R2")
                .doesNotContain("R1\"", "R3\"");
    }

    @Test
    void anErrorOfTheRigMayBeTriedOut() throws Exception {
        String job = ask("of=test&code=PULL&equipment=RIG&quantity=current&amount=3");
        assertThat(text(job)).contains("passed not proven 2 2 These", "passed passed 2 2 These");
        assertThat(text("/judgings")).contains("4 of 4 done");
    }

    @Test
    void runsThatBrokeTheirRecipeAreAScope() throws Exception {
        workshop.plant().say("recipe", "2 00:00", RawData.bakeRevision("B", "20"));
        workshop.plant().say("cure-run", "10:00", RawData.bake("10", "C1", "TC-1", "141", "RCV R1"));
        workshop.plant().say("cure-run", "12:00", RawData.bake("12", "C2", "TC-1", "150", "RCV R2"));
        assertThat(text(ask("of=cure&code=BAKE"))).contains("failed failed 1 These", "passed passed 1 These");
        String scope = "{\"of\": \"cure-verdict\", \"recipe\": \"BAKE\"}";
        assertThat(body(get("/api/v1/traces").param("way", "forward").param("scope", scope)))
                .contains("R1")
                .doesNotContain("R2\"");
    }

    @Test
    void whatCannotBeAskedIsRefusedWithWords() throws Exception {
        assertThat(refusal("of=test&code=PULL&revision=X")).contains("Revision X states nothing to judge by");
        assertThat(refusal("of=test&code=NONE")).contains("There is no specification NONE");
        assertThat(refusal("of=test&code=PULL&from=yesterday")).contains("&quot;yesterday&quot; is no time");
        assertThat(refusal("of=test&code=PULL&quantity=current")).contains("An error needs what reads wrong");
    }

    @Test
    void aProgramBeginsAndWatchesAJob() throws Exception {
        String begun = body(post("/api/v1/judgings")
                .contentType(MediaType.APPLICATION_JSON)
                .content("{\"of\": \"test\", \"code\": \"PULL\", \"revision\": \"C\"}"));
        assertThat(begun).contains("\"total\":4");
        String id = begun.replaceAll("(?s).*\"id\":(\\d+).*", "$1");
        await().pollInSameThread()
                .until(() -> body(get("/api/v1/judgings/test/" + id)).contains("\"state\":\"done\""));
        assertThat(body(get("/api/v1/judgings/test/" + id)))
                .contains("{\"before\":\"passed\",\"after\":\"failed\",\"runs\":2,\"units\":2}");
    }

    /** The address of a job that is done. */
    private String ask(String form) throws Exception {
        MockHttpServletResponse asked = pages.perform(post("/judgings?" + form).header("Sec-Fetch-Site", "same-origin"))
                .andReturn()
                .getResponse();
        String job = Objects.requireNonNull(asked.getRedirectedUrl());
        await().pollInSameThread().until(() -> text(job).contains(" done "));
        return job;
    }

    private String refusal(String form) throws Exception {
        return body(post("/judgings?" + form).header("Sec-Fetch-Site", "same-origin"));
    }

    private void test(String time, String run, String unit, double amperes) {
        Map<String, Object> body = RawData.swept(run, unit, "pass", Points.of(amperes));
        workshop.plant().say("test-run", time, body);
    }

    private String text(String address) throws Exception {
        return body(get(java.net.URI.create(address.replace(" ", "%20"))))
                .replaceAll("<[^>]*>", " ")
                .replaceAll("\\s+", " ");
    }

    private String body(org.springframework.test.web.servlet.RequestBuilder request) throws Exception {
        return pages.perform(request).andReturn().getResponse().getContentAsString();
    }
}
