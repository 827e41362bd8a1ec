package dev.sunthread.journal.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.multipart;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.sunthread.inbox.Lines;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SunthreadTest;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.mock.web.MockMultipartFile;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.MvcResult;
import org.springframework.test.web.servlet.ResultActions;

/** What is plainly no journal is refused where it comes in, over HTTP as on the page, and what is packed is unpacked. */
@SunthreadTest
class FileDoorTests {

    private static final byte[] PICTURE = HexFormat.of().parseHex("89504e470d0a1a0a0000000d4948445200000001");
    private static final String BIRTH = """
            {"id":"b-1","kind":"birth","version":1,"occurredAt":"2026-03-10T08:00:00+01:00","actor":"op-1","source":"x",\
            "body":{"units":[{"item":"RCV","serial":"R9"}]}}
            """;

    @Autowired
    Door door;

    @Autowired
    Lines lines;

    @Autowired
    Sealer sealer;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    MockMvc pages;

    @BeforeEach
    void released() {
        Plant.released(door);
    }

    @Test
    void refusesAPictureOverHttp() throws Exception {
        for (String address : new String[] {"/api/v1/journal/import", "/api/v1/journal/restore"}) {
            pages.perform(post(address).content(PICTURE))
                    .andExpect(status().isUnsupportedMediaType())
                    .andExpect(content().string(containsString("The file is a picture, not a text of lines")));
        }
        assertThat(lines.count(sealer.seal())).isZero();
    }

    @Test
    void refusesAPictureOnThePage() throws Exception {
        page("/journal", PICTURE).andExpect(content().string(containsString("The file is a picture")));
        page("/journal/restore", PICTURE).andExpect(content().string(containsString("The file is a picture")));
        pages.perform(multipart("/journal/raw")
                        .file(new MockMultipartFile("files", "a.csv", null, PICTURE))
                        .param("kind", "test-run"))
                .andExpect(content().string(containsString("The file is a picture")));
        assertThat(lines.count(sealer.seal())).isZero();
    }

    @Test
    void unpacksByWhatTheBytesAre() throws Exception {
        pages.perform(post("/api/v1/journal/import").content(packed(BIRTH)))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("\"accepted\":1,")));
        page("/journal", packed(BIRTH)).andExpect(content().string(containsString("<strong>1</strong> known before")));
    }

    @Test
    void tellsOverHttpWhereItStopped() throws Exception {
        pages.perform(post("/api/v1/journal/import").content(rubbish()))
                .andExpect(status().isUnprocessableContent())
                .andExpect(content().string(containsString("\"stopped\":{\"line\":100,")));
        pages.perform(post("/api/v1/journal/import").param("goOn", "true").content(rubbish()))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("\"keptInInbox\":120}")));
    }

    @Test
    void offersToGoOnOnThePage() throws Exception {
        page("/journal", rubbish().getBytes(StandardCharsets.UTF_8))
                .andExpect(content().string(containsString("Stopped behind line 100.")))
                .andExpect(content().string(containsString("name=\"goOn\" value=\"true\"")));
    }

    @Test
    void saysOnThePageThatAPackedFileIsCut() throws Exception {
        byte[] packed = packed(BIRTH + " ".repeat(10) + HexFormat.of().formatHex(new byte[200]) + "\n");
        page("/journal", Arrays.copyOf(packed, packed.length - 12))
                .andExpect(content()
                        .string(containsString("The packed file is cut or damaged: line 1 is the last whole one")))
                .andExpect(content().string(containsString("<strong>1</strong> accepted<")));
        page("/journal/restore", Arrays.copyOf(packed, 4))
                .andExpect(content().string(containsString("The packed file is cut or damaged")));
    }

    @Test
    void settlesAllLinesOfAFile() throws Exception {
        page("/journal", (rubbish() + "{\"lot\":\"A-17\"").getBytes(StandardCharsets.UTF_8));
        pages.perform(get("/inbox").param("file", "shift.ndjson"))
                .andExpect(content().string(containsString("href=\"/inbox/file?name=shift.ndjson\"")));
        pages.perform(get("/inbox/file").param("name", "shift.ndjson"))
                .andExpect(content().string(containsString("100 lines of this file wait; 0 of them name")));
        page("/journal", "later rubbish".getBytes(StandardCharsets.UTF_8));
        long seen = sealer.seal() - 1;
        settle(seen, "").andExpect(content().string(containsString("Say why the line tells nothing")));
        assertThat(lines.count(sealer.seal())).isEqualTo(101);
        settle(seen, "sent by mistake").andExpect(status().is3xxRedirection());
        assertThat(lines.count(sealer.seal())).isEqualTo(1);
        assertThat(jdbc.sql("SELECT count(*) FROM inbox.line_settlement WHERE why = 'sent by mistake'")
                        .query(Long.class)
                        .single())
                .isEqualTo(100);
    }

    private ResultActions settle(long cutoff, String reason) throws Exception {
        return pages.perform(post("/inbox/file")
                .param("file", "shift.ndjson")
                .param("cutoff", String.valueOf(cutoff))
                .param("id", "file-1")
                .param("reason", reason));
    }

    private ResultActions page(String address, byte[] bytes) throws Exception {
        MockMultipartFile file = new MockMultipartFile("file", "shift.ndjson", null, bytes);
        MvcResult sent = pages.perform(multipart(address).file(file)).andReturn();
        return pages.perform(get("/journal").cookie(sent.getResponse().getCookies()));
    }

    private static String rubbish() {
        StringBuilder rubbish = new StringBuilder();
        for (int i = 1; i <= 120; i++) {
            rubbish.append("no envelope ").append(i).append('\n');
        }
        return rubbish.toString();
    }

    private static byte[] packed(String text) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
            out.write(text.getBytes(StandardCharsets.UTF_8));
        }
        return packed.toByteArray();
    }
}
