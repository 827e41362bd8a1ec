package dev.sunthread.web.label;

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
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.request.MockHttpServletRequestBuilder;

/** The pages that print labels. */
@SunthreadTest
class LabelPageTests {

    @Autowired
    Door door;

    @Autowired
    MockMvc pages;

    private Plant plant;

    @BeforeEach
    void released() {
        plant = Plant.released(door);
        item("A", "R-####");
    }

    private void item(String revision, String pattern) {
        plant.say(
                "item",
                "1 00:01",
                Map.of(
                        "item",
                        "REC",
                        "revision",
                        revision,
                        "name",
                        "Receiver",
                        "tracking",
                        "serial",
                        "level",
                        "receiver",
                        "unitOfMeasure",
                        "pcs",
                        "serialPattern",
                        pattern));
    }

    private String text(MockHttpServletRequestBuilder asked) throws Exception {
        byte[] pdf = pages.perform(asked)
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsByteArray();
        try (var document = Loader.loadPDF(pdf)) {
            return document.getNumberOfPages() + ": " + new PDFTextStripper().getText(document);
        }
    }

    @Test
    void showsAndPrintsTheLabelOfALot() throws Exception {
        plant.receipt("07:00", "A-17", "ADH", "LF-1");
        pages.perform(get("/lot").param("number", "A-17"))
                .andExpect(content().string(containsString("href=\"/labels?of=lot&amp;name=A-17\"")));
        pages.perform(get("/labels?of=lot&name=A-17"))
                .andExpect(content().string(containsString("src=\"/labels/label.svg?of=lot&amp;name=A-17\"")));
        pages.perform(get("/labels/label.svg")
                        .param("of", "lot")
                        .param("name", "A-17")
                        .param("code", "qr"))
                .andExpect(content().contentType("image/svg+xml;charset=UTF-8"))
                .andExpect(content().string(containsString("A-17")));
        assertThat(text(get("/labels/sheet.pdf")
                        .param("of", "lot")
                        .param("name", "A-17")
                        .param("copies", "25")
                        .param("size", "a4-70x37")))
                .startsWith("2: ")
                .contains("A-17", "ADH");
    }

    @Test
    void saysWhatIsWrongWithALabel() throws Exception {
        pages.perform(get("/labels").param("of", "unit").param("name", "R-1"))
                .andExpect(content().string(containsString("item is missing")));
        pages.perform(get("/labels/label.svg")
                        .param("of", "lot")
                        .param("name", "A")
                        .param("size", "none"))
                .andExpect(status().isConflict());
    }

    private MockHttpServletRequestBuilder next(String id, int count) {
        return post("/labels/next").param("id", id).param("item", "REC").param("count", String.valueOf(count));
    }

    @Test
    void givesOutTheNextSerialsOnceBehindThoseThatCameAboutAndThoseGivenOut() throws Exception {
        plant.birth("08:00", "REC", "R-0041", "X-9");
        pages.perform(get("/labels/next")).andExpect(content().string(containsString("REC, from R-0042")));
        pages.perform(next("page-1", 3)).andExpect(redirectedUrl("/labels/issued?id=page-1"));
        pages.perform(next("page-2", 2)).andExpect(redirectedUrl("/labels/issued?id=page-2"));
        pages.perform(get("/labels/issued").param("id", "page-2"))
                .andExpect(content().string(containsString("2 serials of REC, from R-0045 to R-0046.")));
        assertThat(text(get("/labels/issued.pdf").param("id", "page-1")))
                .startsWith("3: ")
                .contains("R-0042", "R-0044");
    }

    @Test
    void refusesMoreSerialsThanThePatternHas() throws Exception {
        item("B", "R-#");
        pages.perform(next("page-1", 10))
                .andExpect(content().string(containsString("There are no more serials of REC")));
        pages.perform(next("page-2", 0)).andExpect(content().string(containsString("Ask for 1 to 1000 serials")));
    }

    @Test
    void printsCommands() throws Exception {
        pages.perform(get("/labels/commands"))
                .andExpect(content().string(containsString("/labels?of=command&amp;name=undo")));
        assertThat(text(get("/labels/sheet.pdf").param("of", "command").param("name", "undo")))
                .contains("undo");
    }
}
