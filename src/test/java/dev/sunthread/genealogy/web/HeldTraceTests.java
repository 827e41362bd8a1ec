package dev.sunthread.genealogy.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.anyLong;
import static org.mockito.Mockito.doAnswer;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.sunthread.genealogy.answer.OpenMatters;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.web.SmallPlant;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.http.MediaType;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.context.bean.override.mockito.MockitoSpyBean;
import org.springframework.test.web.servlet.MockMvc;

/** While a trace is held in the middle of its reading, everything else goes on, and who waits is told how far it is. */
@SunthreadTest(
        properties = {
            "tests.page-wait=0s",
            "sunthread.traces.at-once=1",
            "sunthread.traces.queue=1",
            "sunthread.database.pools.traces.connections=1"
        })
class HeldTraceTests {

    private static final String A_17 = "/api/v1/traces?way=forward&lot=A-17";
    private static final String ASYNC = "respond-async";

    @Autowired
    Door door;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    MockMvc pages;

    @MockitoSpyBean
    OpenMatters matters;

    private final CountDownLatch held = new CountDownLatch(1);
    private final CountDownLatch release = new CountDownLatch(1);

    @BeforeEach
    void heldInTheMiddle() throws Exception {
        SmallPlant.built(door);
        doAnswer(call -> {
                    held.countDown();
                    release.await();
                    return call.callRealMethod();
                })
                .when(matters)
                .touching(any(), any(), any(), anyLong());
        pages.perform(get(A_17).header("Prefer", ASYNC)).andExpect(status().isAccepted());
        held.await();
    }

    @AfterEach
    void letGo() throws Exception {
        release.countDown();
        // made in their order, so nothing is being made when the next test begins
        pages.perform(get(A_17)).andExpect(status().isOk());
        pages.perform(get("/api/v1/traces?lot=A-18")).andExpect(status().isOk());
    }

    @Test
    void pagesFilesAndRecordingGoOn() throws Exception {
        pages.perform(get("/unit").param("item", "RCV").param("serial", "R0001"))
                .andExpect(status().isOk());
        pages.perform(get("/lot").param("number", "A-17").param("format", "csv"))
                .andExpect(status().isOk());
        pages.perform(post("/api/v1/envelopes/do")
                        .contentType(MediaType.APPLICATION_JSON)
                        .content("""
                                {"id": "later-1", "kind": "birth", "version": 1, "occurredAt": "2026-03-10T12:00:00+01:00",
                                 "actor": "op", "source": "BOND", "body": {"units": [{"item": "RCV", "serial": "R0009"}]}}
                                """))
                .andExpect(status().isCreated());
        // what was recorded meanwhile is sealed by the page
        pages.perform(get("/unit").param("item", "RCV").param("serial", "R0009"))
                .andExpect(status().isOk());
        assertThat(jdbc.sql("SELECT count(*) FROM ledger.unsealed")
                        .query(Long.class)
                        .single())
                .isZero();
    }

    @Test
    void aPageSaysWhatIsBeingMadeAndLooksAgainByItself() throws Exception {
        pages.perform(get("/trace").param("way", "forward").param("lot", "A-17"))
                .andExpect(status().isOk())
                .andExpect(header().string("Refresh", containsString("url=/trace?way=forward&lot=A-17&cutoff=")))
                .andExpect(content().string(containsString("The answer is being made")))
                .andExpect(content().string(containsString("writing the lines")))
                .andExpect(content().string(containsString("action=\"/trace/stop\"")));
    }

    @Test
    void joinedAnswersAreWaitedForAsOneIs() throws Exception {
        pages.perform(get("/compare/joined").queryParam("of", "[{\"lot\": \"A-17\"}, {\"lot\": \"A-18\"}]"))
                .andExpect(status().isOk())
                .andExpect(header().string("Refresh", containsString("url=/compare/joined?")))
                .andExpect(header().string("Refresh", containsString("cutoff=")))
                .andExpect(content().string(containsString("The answer is being made")))
                .andExpect(content().string(containsString("action=\"/compare/joined/stop\"")));
        pages.perform(post("/compare/joined/stop").param("of", "[{\"lot\": \"A-17\"}, {\"lot\": \"A-18\"}]"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Stopped")));
        pages.perform(get("/api/v1/traces?lot=A-19&wider=true").header("Prefer", ASYNC))
                .andExpect(status().isAccepted());
    }

    @Test
    void aSecondWaitsInTheQueueAndAThirdIsRefused() throws Exception {
        pages.perform(get("/api/v1/traces?lot=A-18").header("Prefer", ASYNC))
                .andExpect(status().isAccepted())
                .andExpect(header().string("Location", containsString("/api/v1/traces?lot=A-18&cutoff=")))
                .andExpect(header().exists("Retry-After"))
                .andExpect(jsonPath("$.stage").value("WAITING"))
                .andExpect(jsonPath("$.place").value(1));
        pages.perform(get("/api/v1/traces?lot=A-18&wider=true"))
                .andExpect(status().isServiceUnavailable())
                .andExpect(header().exists("Retry-After"))
                .andExpect(jsonPath("$.remedy").exists());
        pages.perform(get("/trace?lot=A-18&wider=true"))
                .andExpect(status().isServiceUnavailable())
                .andExpect(header().exists("Retry-After"));
    }

    @Test
    void whoStopsKeepsTheQuestion() throws Exception {
        String making = jdbc.sql("SELECT max(position) FROM ledger.position")
                .query(String.class)
                .single();
        pages.perform(post("/trace/stop").param("making", making).param("lot", "A-17"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Stopped")))
                .andExpect(content().string(containsString("value=\"A-17\"")));
    }

    @Test
    void waitsNoLongerThanAProgramSays() throws Exception {
        pages.perform(get(A_17).header("Prefer", "wait=0")).andExpect(status().isServiceUnavailable());
        release.countDown();
        pages.perform(get(A_17))
                .andExpect(status().isOk())
                .andExpect(jsonPath("$.question.lot").value("A-17"));
    }
}
