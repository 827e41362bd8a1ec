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
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** The pages of runs, equipment and carriers, and what the page of a unit tells of them. */
@SunthreadTest
class RunPageTests {

    @Autowired
    Door door;

    @Autowired
    MockMvc pages;

    private Plant plant;

    @BeforeEach
    void built() {
        plant = SmallPlant.withRuns(SmallPlant.built(door));
    }

    @Test
    void aUnitTellsWhereItWasCarriedCuredAndTested() throws Exception {
        assertThat(text("/unit?item=RCV&serial=R0003"))
                .contains(
                        "Put into position A1 of carrier TRAY 1",
                        "Cured by recipe SOFT 1 in OVEN on carrier RACK, cure run C/1",
                        "Taken off with everything else that was on carrier TRAY 1",
                        "Failed test SOFT 1 on OVEN, test run T-1",
                        "Signed that it goes on without item CELL of operation bond: none left",
                        "Gave up 1 pcs, recovered into lot L-9",
                        "Scrapped: cracked",
                        "Where it is now scrapped: cracked");
        assertThat(text("/unit?item=RCV&serial=R0002")).contains("Cured by recipe SOFT 1 in OVEN, cure run C/1");
    }

    @Test
    void aCureRunTellsWhoWasInItAndHow() throws Exception {
        assertThat(text("/cure-run?name=C%2F1"))
                .contains("SOFT 1 OVEN op-1", "RCV R0002 receiver by itself", "RCV R0003 receiver TRAY 1 A1")
                .doesNotContain("Open finding");
    }

    @Test
    void aRunNumberUsedTwiceShowsItsFinding() throws Exception {
        plant.say(
                "cure-run",
                "15:00",
                Map.of(
                        "run",
                        "C/1",
                        "recipe",
                        "SOFT 1",
                        "equipment",
                        "OVEN",
                        "startedAt",
                        "2026-03-10T14:30:00+01:00"));
        assertThat(text("/cure-run?name=C%2F1")).contains("Open finding: Cure run C/1 was recorded before");
        assertThat(text("/findings")).contains("cure run C/1");
    }

    @Test
    void aVoidedRunHasNobodyInIt() throws Exception {
        plant.say(
                "test-run",
                "15:00",
                Map.of(
                        "run",
                        "T-2",
                        "unit",
                        Map.of("item", "RCV", "serial", "R0001"),
                        "specification",
                        "SOFT 1",
                        "equipment",
                        "OVEN",
                        "verdict",
                        "pass"));
        assertThat(text("/test-run?name=T-2")).contains("RCV R0001 receiver SOFT 1 OVEN pass");
        plant.undo("15:01", plant.lastId());
        assertThat(text("/test-run?name=T-2")).contains("Nothing is recorded under this number any more");
    }

    @Test
    void equipmentTellsItsChecksAndRuns() throws Exception {
        assertThat(text("/equipment?name=OVEN"))
                .contains("calibration good as written", "cure run C/1 SOFT 1", "test run T-1 SOFT 1");
    }

    @Test
    void aCarrierTellsWhatIsOnItAndWhereItIs() throws Exception {
        assertThat(text("/carrier?name=TRAY%201"))
                .contains("RCV R0003 A1 2026-03-10 11:10:00 2026-03-10 12:10:00", "RACK 2026-03-10 11:11:00 there now");
        assertThat(text("/carrier?name=RACK")).contains("TRAY 1 2026-03-10 11:11:00 there now", "C/1 SOFT 1 OVEN");
    }

    @Test
    void searchFindsThemByNameAndNearly() throws Exception {
        for (String[] found : List.of(
                new String[] {"C/1", "/cure-run?name=C%2F1"},
                new String[] {"T-1", "/test-run?name=T-1"},
                new String[] {"OVEN", "/equipment?name=OVEN"},
                new String[] {"RACK", "/carrier?name=RACK"})) {
            pages.perform(get("/search").param("q", found[0])).andExpect(redirectedUrl(found[1]));
        }
        pages.perform(get("/carrier").param("name", "rack")).andExpect(status().isNotFound());
        assertThat(text("/carrier?name=rack"))
                .contains("There is no carrier rack", "carrier RACK is spelled nearly so");
    }

    /** What a page says, without its marks. */
    private String text(String address) throws Exception {
        return pages.perform(get(URI.create(address)))
                .andReturn()
                .getResponse()
                .getContentAsString()
                .replaceAll("<[^>]*>", " ")
                .replaceAll("\\s+", " ")
                .replace(" ,", ",");
    }
}
