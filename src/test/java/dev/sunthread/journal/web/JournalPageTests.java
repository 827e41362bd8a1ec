package dev.sunthread.journal.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;

import dev.sunthread.journal.Exports;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.SunthreadTest;
import dev.sunthread.web.SmallPlant;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;

/** Journals taken in and restored in the page. */
@SunthreadTest
class JournalPageTests {

    @Autowired
    Door door;

    @Autowired
    Exports exports;

    @Autowired
    MockMvc pages;

    @Test
    void tellsWhatBecameOfEveryLineThatWasNotPlainlyAccepted() throws Exception {
        SmallPlant.built(door);
        String journal = """
                {"id":"b-1","kind":"birth","version":1,"occurredAt":"2026-03-10T08:00:00+01:00","actor":"op-1","source":"x",\
                "body":{"units":[{"item":"RCV","serial":"R9"}]}}
                no envelope
                """;
        sendThenShow("/journal", journal)
                .andExpect(content().string(containsString("<strong>1</strong> accepted<")))
                .andExpect(content().string(containsString("<strong>1</strong> kept in the inbox")))
                .andExpect(content().string(containsString("is not readable as JSON")))
                .andExpect(content().string(containsString("href=\"/inbox/line?id=line-")));
    }

    @Test
    void asksForAFile() throws Exception {
        sendThenShow("/journal", "").andExpect(content().string(containsString("No file was chosen, or it is empty")));
    }

    @Test
    void offersToRestoreWhileNothingIsRecorded() throws Exception {
        pages.perform(get("/journal")).andExpect(content().string(containsString("Restore a whole export")));
        sendThenShow("/journal/restore", "{\"journal\":1}\n")
                .andExpect(content().string(containsString("The journal has no last line: it is cut")));
        SmallPlant.built(door);
        pages.perform(get("/journal")).andExpect(content().string(not(containsString("Restore a whole export"))));
    }

    @Test
    void refusesToRestoreOverRecords() throws Exception {
        SmallPlant.built(door);
        ByteArrayOutputStream export = new ByteArrayOutputStream();
        assertThat(exports.write(export)).isPositive();
        sendThenShow("/journal/restore", export.toString(StandardCharsets.UTF_8))
                .andExpect(content().string(containsString("The database holds records already")));
    }

    private org.springframework.test.web.servlet.ResultActions sendThenShow(String address, String journal)
            throws Exception {
        MockMultipartFile file =
                new MockMultipartFile("file", "shift.ndjson", null, journal.getBytes(StandardCharsets.UTF_8));
        MvcResult sent = pages.perform(multipart(address).file(file))
                .andExpect(redirectedUrl("/journal"))
                .andReturn();
        return pages.perform(get("/journal").cookie(sent.getResponse().getCookies()));
    }
}
