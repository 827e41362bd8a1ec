package dev.sunthread.web.inbox;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.redirectedUrl;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.sunthread.access.Role;
import dev.sunthread.inbox.Findings;
import dev.sunthread.inbox.Lines;
import dev.sunthread.inbox.OpenFinding;
import dev.sunthread.journal.Imports;
import dev.sunthread.journal.Sender;
import dev.sunthread.ledger.Door;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SignedInAs;
import dev.sunthread.testing.SunthreadTest;
import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;

/** What a person does with kept lines and findings. */
@SunthreadTest
class InboxPageTests {

    private static final String BROKEN = """
            {"id":"b-1","kind":"birth","version":1,"occurredAt":"2026-03-10T08:00:00+01:00","actor":"op-1","source":"x",\
            "body":{"units":[{"item":"RVC","serial":"R1"}]}}""";

    @Autowired
    Door door;

    @Autowired
    Imports imports;

    @Autowired
    Lines lines;

    @Autowired
    Findings findings;

    @Autowired
    Sealer sealer;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    MockMvc pages;

    String line;
    Plant plant;

    @BeforeEach
    void keepsALine() throws IOException {
        plant = Plant.released(door);
        line = String.valueOf(imports.takeLine(BROKEN, new Sender("op-1", "shift.ndjson"))
                .orElseThrow()
                .id());
    }

    @Test
    void saysThatAnAnswerIsKeptNoLonger() throws Exception {
        for (String list : List.of("/findings", "/inbox")) {
            pages.perform(get(list).param("answer", "forgotten"))
                    .andExpect(status().is4xxClientError())
                    .andExpect(content().string(containsString("This answer is kept no longer")));
            pages.perform(get(list).param("answer", "forgotten").header("Accept-Language", "de"))
                    .andExpect(content().string(not(containsString("kept no longer"))));
            pages.perform(get(list).param("answer", "forgotten").param("format", "csv"))
                    .andExpect(status().is4xxClientError());
        }
    }

    @Test
    void showsTheFileTheLineAndWhatIsWrong() throws Exception {
        pages.perform(get("/inbox"))
                .andExpect(content().string(containsString("shift.ndjson")))
                .andExpect(content().string(containsString("which is not released")))
                .andExpect(content().string(containsString("href=\"/inbox/line?id=" + line)));
        pages.perform(get("/inbox/line").param("id", line))
                .andExpect(content().string(containsString("<textarea")))
                .andExpect(content().string(containsString("&quot;RVC&quot;")));
    }

    @Test
    void recordsAMendedLineAndSettlesTheKeptOne() throws Exception {
        mend(BROKEN.replace("RVC", "RCV"), "item was mistyped").andExpect(redirectedUrl("/inbox"));
        assertThat(lines.count(sealer.seal())).isZero();
        pages.perform(get("/unit").param("item", "RCV").param("serial", "R1")).andExpect(status().isOk());
    }

    @Test
    void keepsWhoSaidAMendedLine() throws Exception {
        mend(BROKEN.replace("RVC", "RCV"), "item was mistyped");
        assertThat(whoSaid("b-1")).isEqualTo("op-1 by tester");
    }

    @Test
    void putsNoWordsIntoTheMouthOfAnother() throws Exception {
        mend(BROKEN.replace("RVC", "RCV").replace("op-1", "op-2"), "another person");
        assertThat(whoSaid("b-1")).isEqualTo("tester by tester");
    }

    private String whoSaid(String id) {
        return jdbc.sql("SELECT actor || ' by ' || recorded_by FROM ledger.entry WHERE id = ?")
                .param(id)
                .query(String.class)
                .single();
    }

    @Test
    void keepsTheTextBesideTheNewProblemsIfItIsStillWrong() throws Exception {
        mend(BROKEN.replace("RVC", "RRR"), "item was mistyped")
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("names item &quot;RRR&quot;")))
                .andExpect(content().string(containsString("{&quot;item&quot;:&quot;RRR&quot;")));
        assertThat(lines.open(sealer.seal(), 10))
                .singleElement()
                .matches(open -> open.entry().equals(line));
    }

    @Test
    void asksForAReasonAtTheField() throws Exception {
        mend(BROKEN.replace("RVC", "RCV"), " ").andExpect(content().string(containsString("Say what was mended")));
        assertThat(lines.count(sealer.seal())).isEqualTo(1);
    }

    @Test
    void settlesALineThatTellsNothing() throws Exception {
        pages.perform(post("/inbox/nothing")
                        .param("line", line)
                        .param("id", "settled-1")
                        .param("reason", "a test of the scanner"))
                .andExpect(redirectedUrl("/inbox"));
        assertThat(lines.count(sealer.seal())).isZero();
    }

    @Test
    void saysSoIfALineIsNoLongerOpen() throws Exception {
        pages.perform(get("/inbox/line").param("id", "line-gone"))
                .andExpect(status().isConflict())
                .andExpect(content().string(containsString("No open line has this id")));
    }

    @Test
    void settlesAFindingWithAReason() throws Exception {
        plant.bondWithLot("08:00", "R7", "A-99");
        List<OpenFinding> open = findings.open(sealer.seal(), 10);
        pages.perform(get("/findings"))
                .andExpect(content().string(containsString("Lot A-99 has no receipt")))
                .andExpect(content().string(containsString("href=\"/lot?number=A-99\"")));
        settle(open.get(0), "").andExpect(content().string(containsString("Say what was found out and done")));
        for (OpenFinding finding : open) {
            settle(finding, "receipt was late").andExpect(redirectedUrl("/findings"));
        }
        assertThat(findings.count(sealer.seal())).isZero();
    }

    @Test
    void saysWhoSettledAFindingBefore() throws Exception {
        plant.bondWithLot("08:00", "R7", "A-99");
        OpenFinding finding = findings.open(sealer.seal(), 10).get(0);
        settle(finding, "receipt was late").andExpect(redirectedUrl("/findings"));
        pages.perform(post("/findings")
                        .param("entry", finding.entry())
                        .param("finding", String.valueOf(finding.ordinal()))
                        .param("id", "settled-later")
                        .param("why", "another reason"))
                .andExpect(content().string(containsString("was settled before by tester at page on ")));
        assertThat(jdbc.sql("SELECT count(*) FROM inbox.finding_settlement")
                        .query(Long.class)
                        .single())
                .isEqualTo(1);
    }

    @Test
    void takesNothingFromAnotherSitesPage() throws Exception {
        pages.perform(post("/findings").header("Sec-Fetch-Site", "cross-site")).andExpect(status().isForbidden());
    }

    private org.springframework.test.web.servlet.ResultActions mend(String text, String why) throws Exception {
        return pages.perform(post("/inbox/line")
                .param("line", line)
                .param("id", "settled-1")
                .param("text", text)
                .param("why", why));
    }

    private org.springframework.test.web.servlet.ResultActions settle(OpenFinding finding, String why)
            throws Exception {
        return pages.perform(post("/findings")
                .param("entry", finding.entry())
                .param("finding", String.valueOf(finding.ordinal()))
                .param("id", "settled-" + finding.entry() + "-" + finding.ordinal())
                .param("why", why));
    }

    @Test
    @SignedInAs(Role.AUDITOR)
    void showsWhoMayNotSettleTheLineAndWhoMay() throws Exception {
        pages.perform(get("/inbox"))
                .andExpect(content().string(containsString(">Look<")))
                .andExpect(content().string(not(containsString(">Mend<"))))
                .andExpect(content().string(containsString("<strong>quality engineer</strong>")));
        pages.perform(get("/inbox/line").param("id", line))
                .andExpect(content().string(containsString("&quot;RVC&quot;")))
                .andExpect(content().string(not(containsString("<textarea"))))
                .andExpect(content().string(not(containsString("action=\"/inbox"))))
                .andExpect(content().string(containsString("<strong>quality engineer</strong>")));
        pages.perform(get("/findings"))
                .andExpect(content().string(not(containsString("action=\"/findings\""))))
                .andExpect(content().string(containsString("<strong>quality engineer</strong>")));
    }
}
