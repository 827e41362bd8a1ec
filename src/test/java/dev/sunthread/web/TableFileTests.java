package dev.sunthread.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.header;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.sunthread.ledger.Door;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.web.util.HtmlUtils;

/** The tables of pages as files, whole and without formulas. */
@SunthreadTest
class TableFileTests {

    @Autowired
    Door door;

    @Autowired
    MockMvc pages;

    @TempDir
    Path files;

    Plant plant;

    @BeforeEach
    void built() {
        plant = SmallPlant.withRuns(StockedPlant.built(door));
    }

    @Test
    void everyPageWithAListGivesItInBothForms() throws Exception {
        for (String address : new String[] {
            "/trace?lot=A-17",
            "/findings?",
            "/inbox?",
            "/holds?",
            "/expiring?",
            "/waiting?",
            "/in-process?",
            "/stations?",
            "/search?q=R00",
            "/unit?item=RCV&serial=R0001",
            "/unit?item=WALL&serial=W/1&table=built",
            "/lot?number=A-17",
            "/lot?number=A-17&table=containers",
            "/lot?number=A-17&table=parts",
            "/lot?number=A-17&table=charges",
            "/container?label=C/1",
            "/cure-run?name=C/1",
            "/test-run?name=T-1",
            "/equipment?name=OVEN",
            "/carrier?name=RACK",
            "/station?code=BOND",
            "/position?station=BOND&code=V1"
        }) {
            pages.perform(get(URI.create(address + "&format=csv")))
                    .andExpect(status().isOk())
                    .andExpect(content().contentTypeCompatibleWith("text/csv"))
                    .andExpect(header().string("Content-Disposition", containsString("attachment; filename=")));
            assertThat(sheet(address + "&format=xlsx")).as(address).contains("<row");
        }
    }

    @Test
    void givesTheWholeListAndNotThePage() throws Exception {
        for (int i = 0; i < 120; i++) {
            plant.holdUnit("12:00", "RCV R0002", "reason " + i);
        }
        pages.perform(get("/holds")).andExpect(content().string(containsString("1 to 100 of 121 holds")));
        pages.perform(get("/holds").param("page", "2"))
                .andExpect(content().string(containsString("101 to 121 of 121 holds")));
        assertThat(text("/holds?page=2&format=csv").split("\r\n")).hasSize(122);
    }

    @Test
    void letsNoSpreadsheetTakeACellForAFormula() throws Exception {
        plant.holdUnit("12:00", "RCV R0002", "=HYPERLINK(1)");
        plant.holdUnit("12:01", "RCV R0002", "@x,\"y\"");
        plant.holdUnit("12:02", "RCV R0002", "a-1");
        assertThat(text("/holds?format=csv")).contains(",'=HYPERLINK(1),", ",\"'@x,\"\"y\"\"\",", ",a-1,");
        assertThat(sheet("/holds?format=xlsx")).contains("'=HYPERLINK(1)").doesNotContain("<f>");
    }

    @Test
    void keepsTheDigitsOfQuantitiesAndTheOffsetOfTimes() throws Exception {
        assertThat(text("/lot?number=A-17&table=containers&format=csv")).contains("C/1,33,g,2026-03-10T07:01:00Z");
        assertThat(sheet("/lot?number=A-17&table=containers&format=xlsx")).contains("<v>33</v>");
    }

    @Test
    void namesThePositionOfTheLedger() throws Exception {
        pages.perform(get("/holds").param("format", "csv"))
                .andExpect(header().string("Content-Disposition", containsString("holds-at-")))
                .andExpect(header().exists("Ledger-Position"));
    }

    @Test
    void knowsNoOtherTable() throws Exception {
        pages.perform(get("/holds").param("format", "csv").param("table", "none"))
                .andExpect(status().isNotFound());
    }

    private String text(String address) throws Exception {
        return pages.perform(get(URI.create(address))).andReturn().getResponse().getContentAsString();
    }

    /** The first sheet of a workbook with its shared texts. */
    private String sheet(String address) throws Exception {
        byte[] book = pages.perform(get(URI.create(address)))
                .andReturn()
                .getResponse()
                .getContentAsByteArray();
        Path file = Files.write(files.resolve("book.xlsx"), book);
        StringBuilder text = new StringBuilder();
        try (ZipFile parts = new ZipFile(file.toFile())) {
            for (String part : new String[] {"xl/worksheets/sheet1.xml", "xl/sharedStrings.xml"}) {
                byte[] bytes = parts.getInputStream(parts.getEntry(part)).readAllBytes();
                text.append(HtmlUtils.htmlUnescape(new String(bytes, StandardCharsets.UTF_8).replace("&apos;", "'")));
            }
        }
        return text.toString();
    }
}
