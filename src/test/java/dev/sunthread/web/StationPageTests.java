package dev.sunthread.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.net.URI;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** The pages of stations and positions, and the views of a unit as it was built. */
@SunthreadTest
class StationPageTests {

    @Autowired
    Door door;

    @Autowired
    MockMvc pages;

    Plant plant;

    @BeforeEach
    void built() {
        plant = SmallPlant.withRuns(SmallPlant.built(door));
    }

    @Test
    void aStationTellsWhatIsLoadedAndWhatWasDone() throws Exception {
        assertThat(text("/station?code=BOND"))
                .contains("V1 any item A-17", "V2 any item nothing", "bond 1 RCV R0002", "A BOND 10");
        pages.perform(get("/search").param("q", "BOND")).andExpect(redirectedUrl("/station?code=BOND"));
        pages.perform(get("/station").param("code", "bond")).andExpect(status().isNotFound());
    }

    @Test
    void aPositionTellsWhatWasLoadedWhenAndItsCleanPoints() throws Exception {
        plant.charge("12:00", "A-18", "V1");
        plant.cleanPoint("12:05", "V1");
        assertThat(text("/position?station=BOND&code=V1"))
                .contains("no limit is released")
                .contains("A-18 2026-03-10 11:00:00 loaded now", "A-17 2026-03-10 07:00:00 2026-03-10 11:00:00")
                .contains("2026-03-10 11:05:00 purged", "◇");
        pages.perform(get("/position").param("station", "BOND").param("code", "V9"))
                .andExpect(status().isNotFound());
    }

    @Test
    void aPositionTellsItsCarryOver() throws Exception {
        plant.say(
                "station",
                "2 00:00",
                Map.of(
                        "station",
                        "BOND",
                        "revision",
                        "B",
                        "name",
                        "Bonder",
                        "clockUncertainty",
                        "10",
                        "positions",
                        List.of("V1", "TANK"),
                        "mixingBack",
                        List.of("TANK"),
                        "carryOver",
                        List.of(Map.of("position", "V1", "uses", 3, "evidence", "report 7"))));
        assertThat(text("/position?station=BOND&code=V1")).contains("none after 3 uses, as proved by report 7");
        assertThat(text("/position?station=BOND&code=TANK")).contains("mixes back");
    }

    @Test
    void aStationAndAPositionTellWhichItemsMayBeLoaded() throws Exception {
        Map<String, Object> takes = Map.of("position", "V1", "items", List.of("CELL", "ADH"));
        Map<String, Object> body =
                new TreeMap<>(Map.of("station", "BOND", "revision", "B", "name", "Bonder", "clockUncertainty", "10"));
        body.put("takes", List.of(takes));
        plant.say("station", "2 00:00", body);
        assertThat(text("/station?code=BOND")).contains("V1 ADH, CELL A-17", "V2 any item nothing");
        assertThat(text("/position?station=BOND&code=V1")).contains("Takes ADH, CELL, or what is approved instead");
        assertThat(text("/position?station=BOND&code=V2")).contains("Takes any item");
    }

    @Test
    void everyStationCodeOfAUnitAndALotLeadsThere() throws Exception {
        for (String page : List.of("/unit?item=RCV&serial=R0001", "/lot?number=A-17")) {
            assertThat(body(page))
                    .contains("href=\"/station?code=BOND\"", "href=\"/position?station=BOND&amp;code=V1\"");
        }
    }

    @Test
    void aUnitShowsItselfNowAtItsShipmentAndEver() throws Exception {
        String wall = "/unit?item=WALL&serial=W/1";
        plant.remove("13:00", "RCV R0001", "WALL W/1");
        assertThat(built(wall)).contains("Nothing was inside it then").doesNotContain("R0001");
        assertThat(built(wall + "&built=S-1")).contains("RCV R0001").doesNotContain("R0002");
        assertThat(built(wall + "&built=ever")).contains("RCV R0001", "RCV R0002", "was inside from");
    }

    @Test
    void aUnitShowsPositionsWithoutARecord() throws Exception {
        plant.say(
                "structure",
                "1 00:00",
                Map.of(
                        "item",
                        "WALL",
                        "revision",
                        "A",
                        "positions",
                        List.of(
                                Map.of("position", "1", "items", List.of("RCV")),
                                Map.of("position", "3", "items", List.of("RCV")))));
        assertThat(built("/unit?item=WALL&serial=W/1"))
                .contains("1 positions of its structure have no record", "3 nothing recorded; RCV belongs there");
    }

    private String built(String address) throws Exception {
        String page = body(address);
        return plain(page.substring(page.indexOf("id=\"built\""), page.indexOf("<h2>Shipments")));
    }

    private String body(String address) throws Exception {
        return pages.perform(get(URI.create(address))).andReturn().getResponse().getContentAsString();
    }

    private String text(String address) throws Exception {
        String page = body(address);
        return plain(page.substring(page.indexOf("<main"), page.indexOf("</main>")));
    }

    private static String plain(String html) {
        return html.replaceAll("<[^>]*>", " ").replaceAll("\\s+", " ");
    }
}
