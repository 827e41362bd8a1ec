package dev.sunthread.web.receipt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/** A delivery received by the supplier's label. */
@SunthreadTest
class ReceiptPageTests {

    private static final String LABEL = "]d2011234567890123110LF-7736\u001d17261107\u001d3103001250";

    @Autowired
    Door door;

    @Autowired
    MockMvc pages;

    @Autowired
    JdbcClient jdbc;

    private Plant plant;

    @BeforeEach
    void released() {
        plant = Plant.released(door);
        plant.say(
                "item",
                "1 00:01",
                Map.of(
                        "item",
                        "TIM-5",
                        "revision",
                        "A",
                        "name",
                        "Thermal adhesive",
                        "tracking",
                        "lot",
                        "unitOfMeasure",
                        "g",
                        "labelNumbers",
                        List.of("12345678901231", "MB,100/5")));
    }

    private ResultActions shows(MockHttpServletRequestBuilder asked, String... texts) throws Exception {
        ResultActions page = pages.perform(asked).andExpect(status().isOk());
        for (String text : texts) {
            page.andExpect(content().string(containsString(text)));
        }
        return page;
    }

    @Test
    void fillsTheReceiptFromOneScan() throws Exception {
        shows(
                get("/receipts/new").param("scan", LABEL),
                "<option value=\"TIM-5\" selected=\"selected\"",
                "name=\"quantity\" inputmode=\"decimal\" required value=\"1250\"",
                "value=\"2026-11-07\"",
                ">LF-7736</textarea>");
    }

    @Test
    void gathersWhatSeveralCodesSayAndKeepsWhatAPersonGave() throws Exception {
        shows(
                post("/receipts/new")
                        .param("scans[0]", "[)>\u241e06\u241d1PMB,100/5\u241d1TA,1\u241d1TB\u241e\u2404")
                        .param("taken[0]", "-1")
                        .param("scan", "[)>\u241e06\u241d7Q2.5KG\u241e\u2404")
                        .param("supplier", "Mossgate Bonding")
                        .param("id", "page-1"),
                "<option value=\"TIM-5\" selected=\"selected\"",
                "value=\"2500\"",
                "Mossgate Bonding",
                ">A,1\nB</textarea>",
                "name=\"scans[1]\"");
    }

    @Test
    void leavesEmptyWhatIsInDoubtUntilAPersonTakesAReading() throws Exception {
        String run = "[)>061PMB,100/51T88";
        shows(post("/receipts/new").param("scan", run).param("id", "page-1"), "Read it so", "></textarea>");
        shows(
                post("/receipts/new")
                        .param("scans[0]", run)
                        .param("taken[0]", "-1")
                        .param("take", "0.0")
                        .param("id", "page-1"),
                ">88</textarea>");
    }

    private static MockHttpServletRequestBuilder receipt(String scan) {
        return post("/receipts")
                .param("id", "page-1")
                .param("scans[0]", scan)
                .param("lot", "A-90")
                .param("item", "TIM-5")
                .param("quantity", "1250")
                .param("expiresOn", "2026-11-07")
                .param("supplierLots", "LF-7736\nLF-7737");
    }

    @Test
    void recordsTheConfirmedReceiptOnce() throws Exception {
        pages.perform(receipt(LABEL)).andExpect(redirectedUrl("/lot?number=A-90"));
        shows(receipt(LABEL), "was recorded before with other content");
        assertThat(jdbc.sql("SELECT quantity || unit_of_measure || ' ' || (expires_at AT TIME ZONE 'UTC')"
                                + " FROM materials.receipt")
                        .query(String.class)
                        .list())
                .containsExactly("1250g 2026-11-08 00:00:00");
        assertThat(choices()).isEmpty();
    }

    private List<String> choices() {
        return jdbc.sql("SELECT what || ': ' || scanned || ' is ' || name FROM scan.choice ORDER BY entry")
                .query(String.class)
                .list();
    }

    @Test
    void offersWhatIsNearlySpelledSoAndRecordsWhatAPersonChose() throws Exception {
        plant.receipt("07:00", "A-17", "ADH", "LF-7736");
        String label = "[)>\u241e06\u241d1PMB,1O0/5\u241d1TLF-77E6\u241e\u2404"
                .replace("77E6", "7736")
                .replace("LF", "lf");
        shows(
                get("/receipts/new").param("scan", label),
                "The label names item MB,1O0/5",
                "Nearly spelled so: TIM-5",
                "Nearly the same supplier lot was received before: LF-7736");
        pages.perform(receipt(label)).andExpect(redirectedUrl("/lot?number=A-90"));
        assertThat(choices()).containsExactly("ITEM: MB,1O0/5 is TIM-5", "SUPPLIER_LOT: lf-7736 is LF-7736");
    }

    @Test
    void saysWhatIsMissingAndLosesNothing() throws Exception {
        shows(
                post("/receipts").param("id", "page-1").param("scans[0]", LABEL).param("supplier", "Mossgate Bonding"),
                "Give the lot a number of your own",
                "Mossgate Bonding",
                "value=\"2026-11-07\"");
        plant.receipt("07:00", "A-90", "ADH", "X");
        shows(receipt(LABEL), "Lot A-90 was received or made before");
        assertThat(choices()).isEmpty();
        shows(receipt(LABEL).param("lot", "").param("quantity", "x"), "Give the quantity as a number such as 2.5");
    }

    @Test
    void refusesADayThatDoesNotExist() throws Exception {
        shows(
                post("/receipts")
                        .param("id", "page-1")
                        .param("lot", "A-91")
                        .param("item", "TIM-5")
                        .param("quantity", "1")
                        .param("expiresOn", "2026-13-01"),
                "is not a day");
    }
}
