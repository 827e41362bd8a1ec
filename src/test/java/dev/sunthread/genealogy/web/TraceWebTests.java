package dev.sunthread.genealogy.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.jsonPath;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import com.jayway.jsonpath.JsonPath;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.web.SmallPlant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** The trace as a page, as JSON and as CSV. */
@SunthreadTest
class TraceWebTests {

    private static final String ALL = "/api/v1/traces?way=forward&lot=A-17";

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
    void showsEveryCountAsALinkToItsLines() throws Exception {
        pages.perform(get("/trace").param("way", "forward").param("lot", "A-17"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("As recorded up to ledger position")))
                .andExpect(
                        content()
                                .string(
                                        containsString(
                                                "href=\"/trace?way=forward&amp;lot=A-17&amp;cutoff=21&amp;level=receiver&amp;when=now&amp;certainty=certain#lines\"")))
                .andExpect(content().string(containsString("href=\"/unit?item=RCV&amp;serial=R0001\"")));
    }

    @Test
    void showsTheLinesThatAFilterLeaves() throws Exception {
        pages.perform(get("/trace")
                        .param("way", "forward")
                        .param("lot", "A-17")
                        .param("level", "wall")
                        .param("when", "at-shipment"))
                .andExpect(content().string(containsString("1 to 1 of 1")))
                .andExpect(content().string(containsString("serial=W%2F1")));
    }

    @Test
    void givesTheSameAnswerToThePageAndToPrograms() throws Exception {
        String json = pages.perform(get(ALL))
                .andExpect(jsonPath("$.question.lot").value("A-17"))
                .andExpect(jsonPath("$.page").value(1))
                .andReturn()
                .getResponse()
                .getContentAsString();
        String hash = JsonPath.read(json, "$.hash");
        pages.perform(get("/trace").param("way", "forward").param("lot", "A-17"))
                .andExpect(content().string(containsString("title=\"" + hash + "\"")));
        pages.perform(get("/api/v1/traces.csv").param("lot", "A-17")).andExpect(header().string("Answer-Hash", hash));
    }

    @Test
    void repeatsAnAnswerAtItsCutOff() throws Exception {
        String first = pages.perform(get(ALL)).andReturn().getResponse().getContentAsString();
        Integer cutoff = JsonPath.read(first, "$.cutoff");
        plant.remove("12:00", "RCV R0001", "WALL W/1");
        pages.perform(get(ALL).param("cutoff", cutoff.toString()))
                .andExpect(jsonPath("$.hash").value(JsonPath.<String>read(first, "$.hash")));
    }

    @Test
    void writesEveryLineAsCsv() throws Exception {
        String csv = pages.perform(get("/api/v1/traces.csv").param("lot", "A-17"))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsString();
        assertThat(csv).startsWith("kind,level,item,name,issuer,ever,now,at_shipment,at,reason,place,holds");
        assertThat(csv.split("\r\n"))
                .hasSizeGreaterThan(3)
                .anyMatch(line -> line.startsWith("unit,wall,WALL,W/1,plant,"));
    }

    @Test
    void filtersByPlaceAndHoldAndByWhatIsOutermost() throws Exception {
        plant.birth("11:30", "RCV", "R9");
        plant.bondWithLot("11:31", "R9", "A-17");
        plant.say("hold", "11:40", java.util.Map.of("units", java.util.List.of(Plant.unit("RCV R9")), "reason", "odd"));
        pages.perform(get(ALL).param("place", "at station BOND").param("level", "receiver"))
                .andExpect(jsonPath("$.lines[?(@.name == 'R9')].spot").value("at station BOND"))
                .andExpect(jsonPath("$.lines[?(@.name == 'R0001')]").isEmpty());
        pages.perform(get(ALL).param("place", "shipped to Sunny Field"))
                .andExpect(jsonPath("$.lines[?(@.name == 'R0001')].within").value("wall"));
        pages.perform(get(ALL).param("place", "shipped to Sunny Field").param("outermost", "true"))
                .andExpect(jsonPath("$.lines[*].name").value("W/1"));
        pages.perform(get(ALL).param("held", "true").param("level", "receiver"))
                .andExpect(jsonPath("$.lines[*].name").value("R9"));
    }

    @Test
    void listsLevelsFromTheOutermostAndLotsBehindUnits() throws Exception {
        var place = java.util.Map.of("position", "1", "items", java.util.List.of("RCV"));
        plant.say(
                "structure",
                "1 00:10",
                java.util.Map.of("item", "WALL", "revision", "A", "positions", java.util.List.of(place)));
        plant.say(
                "blend",
                "07:30",
                java.util.Map.of(
                        "lot",
                        "MIX-1",
                        "item",
                        "ADH",
                        "way",
                        "blend",
                        "components",
                        java.util.List.of(java.util.Map.of("lot", "A-17"))));
        pages.perform(get(ALL))
                .andExpect(jsonPath("$.counts[?(@.when == 'EVER')].level")
                        .value(org.hamcrest.Matchers.contains("wall", "receiver", "lot")))
                .andExpect(jsonPath("$.lines[0].name").value("W/1"))
                .andExpect(jsonPath("$.lines[-1].name").value("MIX-1"));
        pages.perform(get(ALL).param("sort", "level").param("descending", "true"))
                .andExpect(jsonPath("$.lines[0].name").value("MIX-1"));
    }

    @Test
    void leadsToTheFindingsAndLinesThatTouchTheAnswer() throws Exception {
        plant.bondWithLot("12:00", "R0001", "A-99");
        plant.remove("12:01", "RCV R0404", "WALL W404");
        String id = JsonPath.read(
                pages.perform(get("/api/v1/traces?way=forward&lot=A-99"))
                        .andReturn()
                        .getResponse()
                        .getContentAsString(),
                "$.id");
        pages.perform(get("/trace").param("lot", "A-99"))
                .andExpect(content().string(containsString("href=\"/findings?answer=" + id)))
                .andExpect(content().string(containsString("href=\"/inbox?answer=" + id)));
        pages.perform(get("/findings").param("answer", id))
                .andExpect(content().string(containsString("Lot A-99 has no receipt")))
                .andExpect(content().string(not(containsString("R0404"))));
        pages.perform(get("/findings")).andExpect(content().string(containsString("R0404")));
        pages.perform(get("/inbox").param("answer", id)).andExpect(content().string(containsString("No line waits")));
    }

    @Test
    void saysWhatIsWrongWithAQuestionBesideTheForm() throws Exception {
        pages.perform(get("/trace").param("lot", "NOPE"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("Lot NOPE is not recorded")))
                .andExpect(content().string(containsString("href=\"/search?q=NOPE\"")));
        pages.perform(get("/trace").param("lot", "A-17").param("cutoff", "soon"))
                .andExpect(content().string(containsString("can not be &quot;soon&quot;")));
        pages.perform(get("/trace").param("lot", "A-17").param("at", "yesterday"))
                .andExpect(content().string(containsString("is not a date and time")));
    }

    @Test
    void refusesAProgramsQuestionAsAProblem() throws Exception {
        pages.perform(get("/api/v1/traces").param("lot", "NOPE"))
                .andExpect(status().isConflict())
                .andExpect(jsonPath("$.remedy").exists());
        pages.perform(get("/api/v1/traces").param("item", "RCV"))
                .andExpect(status().isUnprocessableContent())
                .andExpect(jsonPath("$.problems[0].field").value("lot"));
    }

    @Test
    void describesItselfForPrograms() throws Exception {
        pages.perform(get("/v3/api-docs"))
                .andExpect(jsonPath("$.paths['/api/v1/traces'].get.parameters[*].name")
                        .isArray())
                .andExpect(content().string(containsString("supplierLot")));
    }
}
