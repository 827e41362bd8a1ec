package dev.sunthread.genealogy.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import com.jayway.jsonpath.JsonPath;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.web.SmallPlant;
import java.net.URI;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** The flow of an answer as JSON, as a page, and beside the lines. */
@SunthreadTest
class FlowWebTests {

    private static final String DATA = "/api/v1/traces/flow?way=forward&lot=A-17";

    @Autowired
    Door door;

    @Autowired
    MockMvc pages;

    Plant plant;

    @BeforeEach
    void built() {
        plant = SmallPlant.built(door);
    }

    @Test
    void goesFromTheSuspectThroughLevelsToPlaces() throws Exception {
        pages.perform(get(DATA))
                .andExpect(jsonPath("$.nodes[0].name").value("suspects"))
                .andExpect(link("suspects", "receiver CERTAIN", 2))
                .andExpect(link("receiver CERTAIN", "wall CERTAIN", 1))
                .andExpect(link("wall CERTAIN", "at shipped to Sunny Field", 1))
                .andExpect(link("receiver CERTAIN", "at taken out", 1));
    }

    private static org.springframework.test.web.servlet.ResultMatcher link(String from, String to, int things) {
        return jsonPath("$.links[?(@.from.id == '%s' && @.to.id == '%s')].count".formatted(from, to))
                .value(things);
    }

    /** Every thing of the answer is reached once, and every outermost unit is at one place. */
    @Test
    void countsEveryLineOnce() throws Exception {
        String flow = text(DATA);
        List<Integer> reached = JsonPath.read(flow, "$.links[?(@.to.certainty != null)].count");
        Integer total = JsonPath.read(text("/api/v1/traces?way=forward&lot=A-17"), "$.total");
        assertThat(reached.stream().mapToInt(Integer::intValue).sum()).isEqualTo(total);
        List<Map<String, Object>> places = JsonPath.read(flow, "$.nodes[?(@.id =~ /at .*/)]");
        assertThat(places).isNotEmpty();
    }

    @Test
    void everyBlockLeadsToExactlyItsUnits() throws Exception {
        List<Map<String, Object>> nodes =
                JsonPath.read(text(DATA), "$.nodes[?(@.certainty != null || @.id =~ /at .*/)]");
        for (Map<String, Object> node : nodes) {
            String lines =
                    "/api/v1/traces" + String.valueOf(node.get("address")).substring("/trace".length());
            Integer listed = JsonPath.read(text(lines.replace("#lines", "")), "$.total");
            assertThat(listed).as(lines).isEqualTo(node.get("count"));
        }
    }

    @Test
    void tellsALinkAgainstTheColumnsAndDrawsNone() throws Exception {
        plant.say(
                "blend",
                "09:40",
                Map.of("lot", "MIX-1", "item", "ADH", "way", "blend", "components", List.of(Map.of("lot", "A-17"))));
        plant.say(
                "blend",
                "09:41",
                Map.of("lot", "MIX-2", "item", "ADH", "way", "blend", "components", List.of(Map.of("lot", "MIX-1"))));
        pages.perform(get(DATA))
                .andExpect(jsonPath("$.links[?(@.from.id == 'lot CERTAIN' && @.to.id == 'lot CERTAIN')].back")
                        .value(true));
        pages.perform(get("/trace/flow").param("lot", "A-17"))
                .andExpect(content().string(containsString("not drawn: against the columns")));
    }

    @Test
    void goesBackFromAUnitToItsLots() throws Exception {
        pages.perform(get("/api/v1/traces/flow?way=backward&item=WALL&serial=W/1"))
                .andExpect(link("lot CERTAIN", "receiver CERTAIN", 1))
                .andExpect(jsonPath("$.links[?(@.to.id == 'suspects')]").isNotEmpty());
    }

    @Test
    void showsThePictureWithItsTableAndWithoutInlineScript() throws Exception {
        String page = text("/trace/flow?way=forward&lot=A-17");
        assertThat(page)
                .contains("data-flow=\"/api/v1/traces/flow?way=forward&amp;lot=A-17&amp;cutoff=21\"")
                .contains("/webjars/echarts/5.3.1/dist/echarts.min.js", "/flow.js", "The same as a table")
                .doesNotContainPattern("<script(?![^>]*src=)");
        pages.perform(get("/webjars/echarts/5.3.1/dist/echarts.min.js")).andExpect(status().isOk());
        assertThat(text("/trace/flow?way=forward&lot=A-17&format=csv"))
                .startsWith("From,Class,To,Class there,Things\r\nsuspects,,");
    }

    @Test
    void sendsAQuestionThatAsksNothingToTheForm() throws Exception {
        pages.perform(get("/trace/flow")).andExpect(redirectedUrl("/trace"));
        pages.perform(get("/trace/flow").param("lot", "NOPE"))
                .andExpect(content().string(containsString("Lot NOPE is not recorded")));
    }

    private String text(String address) throws Exception {
        return pages.perform(get(URI.create(address))).andReturn().getResponse().getContentAsString();
    }
}
