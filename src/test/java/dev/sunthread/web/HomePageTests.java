package dev.sunthread.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.net.URI;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;

/** The start page and the lists behind its counts. */
@SunthreadTest
class HomePageTests {

    @Autowired
    Door door;

    @Autowired
    Clock clock;

    @Autowired
    MockMvc pages;

    Plant plant;

    @BeforeEach
    void built() {
        plant = SmallPlant.built(door);
    }

    @Test
    void countsWhatIsOnHoldByWhatItIs() throws Exception {
        plant.say("hold", "11:10", Map.of("lots", List.of("A-17"), "reason", "late paper"));
        assertThat(text("/")).contains("1 units", "1 lots");
        assertThat(text("/holds?of=lot")).contains("late paper").doesNotContain("scratched");
    }

    @Test
    void listsWhatExpiresWhileSomeIsOnHand() throws Exception {
        expiring("E-PAST", -1);
        expiring("E-SOON", 6);
        expiring("E-LATER", 30);
        expiring("E-GONE", -1);
        plant.say("lot-ending", "12:00", Map.of("lot", "E-GONE", "why", "used-up"));
        expiring("E-EMPTY", -1);
        plant.say("count", "12:01", Map.of("lot", "E-EMPTY", "quantity", "0", "unitOfMeasure", "g", "place", "scale"));
        assertThat(text("/expiring"))
                .contains("expired E-PAST", "expires soon E-SOON")
                .doesNotContain("E-LATER", "E-GONE", "E-EMPTY");
        assertThat(text("/")).contains("1 lots and containers are past their time", "1 are so within seven days");
    }

    @Test
    void aLotMadeOfOneThatExpiresExpiresWithIt() throws Exception {
        expiring("E-PAST", -1);
        plant.say(
                "blend",
                "12:00",
                Map.of("lot", "MIX-9", "item", "ADH", "way", "blend", "components", List.of(Map.of("lot", "E-PAST"))));
        assertThat(text("/expiring")).contains("expired MIX-9");
    }

    @Test
    void anOpenedContainerExpiresWithItsLot() throws Exception {
        expiring("E-SOON", 3);
        var filling = Map.of("label", "C-5", "quantity", "10", "unitOfMeasure", "g");
        plant.say("container", "12:00", Map.of("lot", "E-SOON", "containers", List.of(filling)));
        assertThat(text("/expiring")).doesNotContain("C-5");
        plant.say("container-opening", "12:01", Map.of("container", "C-5"));
        assertThat(text("/expiring")).contains("E-SOON C-5 ADH 2026-03-10 11:01:00 10 g");
    }

    @Test
    void listsLotsThatWaitForTheirRelease() throws Exception {
        assertThat(text("/waiting")).contains("A-17 ADH 100 g", "A-18 ADH 100 g");
        plant.say("incoming-release", "12:00", Map.of("lot", "A-17", "verdict", "released", "inspected", "seal"));
        assertThat(text("/waiting")).doesNotContain("A-17").contains("A-18");
        assertThat(text("/")).contains("1 lots wait for incoming release");
    }

    @Test
    void countsUnitsThatAreNeitherShippedNorScrapped() throws Exception {
        assertThat(text("/in-process")).contains("receiver: 2", "RCV R0002").doesNotContain("W/1", "R0001");
        plant.takeBack("12:00", "Sunny Field", "WALL W/1");
        assertThat(text("/in-process")).contains("receiver: 3", "wall: 1", "RCV R0001");
        plant.say("scrap", "12:01", Map.of("units", List.of(Plant.unit("WALL W/1")), "why", "cracked"));
        assertThat(text("/in-process?level=receiver")).contains("RCV R0002").doesNotContain("R0001");
    }

    @Test
    void tellsTheLongestSilentStations() throws Exception {
        plant.station("OVEN", "10");
        assertThat(text("/stations"))
                .containsPattern("OVEN OVEN nothing yet .*BOND BOND 2026-03-10 07:21:00 step bond");
        assertThat(text("/")).contains("Longest silent of 2 stations");
    }

    private void expiring(String lot, int days) {
        Map<String, Object> body = new HashMap<>(Map.of(
                "lot",
                lot,
                "item",
                "ADH",
                "quantity",
                "50",
                "unitOfMeasure",
                "g",
                "supplier",
                "Far",
                "supplierLots",
                List.of()));
        body.put(
                "expiresAt",
                DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(
                        OffsetDateTime.now(clock).plusDays(days).truncatedTo(ChronoUnit.SECONDS)));
        plant.say("receipt", "07:00", body);
    }

    /** What the main part of a page says, without its marks. */
    private String text(String address) throws Exception {
        String page = pages.perform(get(URI.create(address)))
                .andReturn()
                .getResponse()
                .getContentAsString();
        return page.substring(page.indexOf("<main"), page.indexOf("</main>"))
                .replaceAll("<[^>]*>", " ")
                .replaceAll("\\s+", " ");
    }
}
