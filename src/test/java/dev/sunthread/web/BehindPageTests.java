package dev.sunthread.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;

import dev.sunthread.ledger.Door;
import dev.sunthread.quality.StationBehind;
import dev.sunthread.quality.StationsBehind;
import dev.sunthread.testing.SunthreadTest;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

/** A person says that a station is behind and that it has caught up; answers and the start page name it in between. */
@SunthreadTest
class BehindPageTests {

    private static final String PAGE = "/stations/behind";

    @Autowired
    Door door;

    @Autowired
    MockMvc pages;

    @Autowired
    StationsBehind behind;

    @BeforeEach
    void built() {
        SmallPlant.built(door);
    }

    private ResultActions saysBehind(String since, String why) throws Exception {
        return pages.perform(post(PAGE)
                .param("id", "behind-1")
                .param("station", "BOND")
                .param("since", since)
                .param("why", why));
    }

    @Test
    void aStationIsNamedUntilSomebodySaysThatItHasCaughtUp() throws Exception {
        saysBehind("2026-03-10T12:00", "Steps are on paper").andExpect(redirectedUrl(PAGE));
        for (String address : List.of("/", PAGE, "/trace?way=forward&lot=A-17")) {
            pages.perform(get(address)).andExpect(content().string(containsString("Steps are on paper")));
        }
        assertThat(behind.now()).extracting(StationBehind::station).containsExactly("BOND");
        pages.perform(post("/stations/caught-up")
                        .param("entry", "behind-1")
                        .param("id", "up-1")
                        .param("why", "All sheets are entered"))
                .andExpect(redirectedUrl(PAGE));
        pages.perform(get("/trace?way=forward&lot=A-17"))
                .andExpect(content().string(not(containsString("Steps are on paper"))));
    }

    @Test
    void whatIsWrongIsToldAndWhatWasTypedStays() throws Exception {
        saysBehind("2026-03-10T12:00", " ").andExpect(content().string(containsString("Say what keeps it behind")));
        saysBehind("", "Steps are on paper")
                .andExpect(content().string(containsString("Give the time until which")))
                .andExpect(content().string(containsString("value=\"Steps are on paper\"")));
        saysBehind("2099-01-01T12:00", "Steps are on paper")
                .andExpect(content().string(containsString("is later than when it was noticed")))
                .andExpect(content().string(containsString("value=\"Steps are on paper\"")));
        pages.perform(post("/stations/caught-up")
                        .param("entry", "none")
                        .param("id", "up-1")
                        .param("why", "All sheets are entered"))
                .andExpect(content().string(containsString("says of no station that it is behind")));
        assertThat(behind.now()).isEmpty();
    }
}
