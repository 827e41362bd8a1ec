package dev.sunthread.web;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.SunthreadTest;
import org.hamcrest.Matcher;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

/** What the pages of a lot and of a container show of stock and papers. */
@SunthreadTest
class StockPageTests {

    @Autowired
    Door door;

    @Autowired
    MockMvc pages;

    @BeforeEach
    void built() {
        StockedPlant.built(door);
    }

    @Test
    void lotShowsItsStatusReleaseAndPapers() throws Exception {
        shows(
                lot("A-17"),
                ">released</span>",
                "seal whole",
                "/attachments/" + StockedPlant.ABC,
                "paper &lt;A-17&gt;.html");
        shows(lot("A-18"), ">waiting for release</span>", ">ended</span>", "No incoming release is recorded");
        shows(lot("MIX-1"), ">made here</span>", "no time is stated");
    }

    @Test
    void lotShowsWhatItWasMadeFromAndWhatWasMadeOfIt() throws Exception {
        shows(
                lot("MIX-1"),
                "What it was made from",
                "href=\"/lot?number=A-17\"",
                "href=\"/container?label=C/1\"",
                ">5</td><td>g</td>");
        shows(lot("A-17"), "Lots that were made of it", "href=\"/lot?number=MIX-1\"");
        shows(lot("REST-1"), "position V1 of BOND");
        lot("A-17").andExpect(content().string(not(containsString("What it was made from"))));
    }

    @Test
    void lotShowsItsBalanceAndItsContainers() throws Exception {
        shows(
                lot("A-17"),
                "went into other lots",
                "Quantity (g)</th>",
                ">100</td>",
                "on hand",
                "unexplained",
                "records without a quantity");
        shows(lot("A-17"), ">33</td><td>g</td>", "Freezer 2", "1 h 30 min", "frozen");
    }

    /** 30 + 10 g filled in, 5 g taken out, 33 g counted: 2 g are unexplained. */
    @Test
    void containerShowsItsLife() throws Exception {
        ResultActions container = container("C/1");
        shows(container, "lot ", "href=\"/lot?number=A-17\"", " mixed with lot ", "href=\"/lot?number=A-18\"");
        shows(container, "1 h 30 min in one excursion", ">40</td>", ">33</td>", ">2</td>");
        shows(container, "Filled with 30 g of", "Put to BOND, at room temperature", "Opened", "Counted 33 g, scale");
        shows(container, "Gave 5 g to");
    }

    @Test
    void containerThatWasNeverFilledSaysSoWithItsFinding() throws Exception {
        shows(container("C/404"), "nothing that was recorded", "Nothing is recorded as filled into container C/404");
        shows(pages.perform(get("/findings")), "href=\"/container?label=C/404\"");
    }

    @Test
    void searchLeadsToAContainerByItsLabel() throws Exception {
        pages.perform(get("/search").param("q", "C/1")).andExpect(redirectedUrl("/container?label=C%2F1"));
        pages.perform(get("/container").param("label", "c/1"))
                .andExpect(status().isNotFound())
                .andExpect(content().string(containsString("/container?label=C%2F1")));
    }

    @Test
    void documentIsGivenAsAFileThatABrowserDoesNotRun() throws Exception {
        pages.perform(get("/attachments/" + StockedPlant.ABC))
                .andExpect(content().string("abc"))
                .andExpect(content().contentType("text/html"))
                .andExpect(header().string("Content-Disposition", containsString("attachment; ")))
                .andExpect(header().string("X-Content-Type-Options", "nosniff"));
        pages.perform(get("/attachments/" + "0".repeat(64))).andExpect(status().isNotFound());
    }

    private ResultActions lot(String number) throws Exception {
        return pages.perform(get("/lot").param("number", number));
    }

    private ResultActions container(String label) throws Exception {
        return pages.perform(get("/container").param("label", label));
    }

    private static void shows(ResultActions page, String... texts) throws Exception {
        for (String text : texts) {
            Matcher<String> shown = containsString(text);
            page.andExpect(status().isOk()).andExpect(content().string(shown));
        }
    }
}
