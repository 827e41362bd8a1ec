package dev.sunthread.web.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.sunthread.kernel.UnitId;
import dev.sunthread.ledger.Door;
import dev.sunthread.scan.label.LabelCode;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;

/** Labels scanned into the search. */
@SunthreadTest
class ScanSearchTests {

    @Autowired
    Door door;

    @Autowired
    MockMvc pages;

    @Autowired
    JdbcClient jdbc;

    private Plant plant;

    @BeforeEach
    void told() {
        plant = Plant.released(door);
        plant.receipt("07:00", "A-17", "ADH", "LF-7O36");
        plant.say(
                "container",
                "07:10",
                Map.of(
                        "lot",
                        "A-17",
                        "containers",
                        java.util.List.of(Map.of("label", "A-17-01", "quantity", "10", "unitOfMeasure", "g"))));
        plant.birth("08:00", "RCV", "RC-00042");
    }

    private void leadsTo(String scan, String address) throws Exception {
        pages.perform(get("/search").param("q", scan)).andExpect(redirectedUrl(address));
    }

    @Test
    void ownLabelsLeadToWhatTheyName() throws Exception {
        leadsTo(LabelCode.unit(UnitId.of(null, "RCV", "RC-00042")), "/unit?item=RCV&serial=RC-00042");
        leadsTo(LabelCode.lot("A-17"), "/lot?number=A-17");
        leadsTo(LabelCode.container("A-17-01"), "/container?label=A-17-01");
        leadsTo(LabelCode.station("BOND"), "/station?code=BOND");
        leadsTo(LabelCode.position("BOND", "V1"), "/position?station=BOND&code=V1");
    }

    @Test
    void aSuppliersLabelLeadsToItsLot() throws Exception {
        leadsTo("]d201123456789012311" + "0LF-7O36", "/trace?way=forward&supplierLot=LF-7O36");
        leadsTo("[)>{RS}06{GS}1PX{GS}1TLF-7O36{RS}{EOT}", "/trace?way=forward&supplierLot=LF-7O36");
    }

    @Test
    void tellsWhatALabelSaysThatNamesNothingRecorded() throws Exception {
        pages.perform(get("/search").param("q", "]d20112345678901231" + "17261107" + "10NEW"))
                .andExpect(content().string(containsString("What the label says")))
                .andExpect(content().string(containsString("2026-11-07")))
                .andExpect(content().string(containsString("Receive a delivery with this label")));
        pages.perform(get("/search").param("q", "]d20112345678901232"))
                .andExpect(content().string(containsString("The check digit is wrong")));
        pages.perform(get("/search").param("q", "]d20112345678901232").locale(Locale.GERMAN))
                .andExpect(content().string(containsString("Die Prüfziffer ist falsch")));
    }

    @ParameterizedTest
    @CsvSource({
        "rc-00042, case",
        "RC-OOO42, 0 and O",
        "RC-42, leading noughts",
        "RC00042, marks between its parts",
        "rc-0OO42, '0 and O, case'",
    })
    void offersWhatTheTextIsEasilyTakenFor(String text, String why) throws Exception {
        var page = pages.perform(get("/search").param("q", text)).andExpect(status().isOk());
        page.andExpect(content().string(containsString("RC-00042")));
        for (String word : why.split(", ")) {
            page.andExpect(content().string(containsString(word)));
        }
    }

    @Test
    void findsALabelOfSeveralNumbersThatLostItsMarks() throws Exception {
        pages.perform(get("/search").param("q", "A1701")).andExpect(content().string(containsString("A-17-01")));
    }

    @Test
    void recordsWhatAPersonChoseAndTellsItTheNextTime() throws Exception {
        var choice = post("/search/choice")
                .param("q", "RC-O0042")
                .param("address", "/unit?item=RCV&serial=RC-00042")
                .param("id", "page-1");
        pages.perform(choice).andExpect(redirectedUrl("/unit?item=RCV&serial=RC-00042"));
        assertThat(jdbc.sql("SELECT what || ' ' || item || ' ' || name || ' for ' || scanned FROM scan.choice")
                        .query(String.class)
                        .single())
                .isEqualTo("UNIT RCV RC-00042 for RC-O0042");
        pages.perform(get("/search").param("q", "RC-O0042"))
                .andExpect(content().string(containsString("Taken for unit RCV RC-00042 before, by tester")));
    }

    @Test
    void refusesAChoiceThatWasNotOffered() throws Exception {
        pages.perform(post("/search/choice")
                        .param("q", "RC-O0042")
                        .param("address", "/lot?number=A-17")
                        .param("id", "page-1"))
                .andExpect(status().isConflict());
    }

    @Test
    void findsNothingInWhatMeansNothing() throws Exception {
        for (String text : new String[] {"\u0000", "]XX", "[)>", "\u001d", "%_\\"}) {
            pages.perform(get("/search").param("q", text))
                    .andExpect(status().isOk())
                    .andExpect(content().string(not(containsString("Did you mean"))));
        }
    }
}
