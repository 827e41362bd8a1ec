package dev.sunthread.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.not;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.get;
import static org.springframework.test.web.servlet.request.MockMvcRequestBuilders.post;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.content;
import static org.springframework.test.web.servlet.result.MockMvcResultMatchers.status;

import dev.sunthread.access.Role;
import dev.sunthread.ledger.Door;
import dev.sunthread.testing.KnownPeople;
import dev.sunthread.testing.Plant;
import dev.sunthread.testing.SignedInAs;
import dev.sunthread.testing.SunthreadTest;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.test.web.servlet.MockMvc;
import org.springframework.test.web.servlet.ResultActions;

/** Blank records: printed, entered once, void, and seen while they are open. */
@SunthreadTest
class PaperPageTests {

    @Autowired
    Door door;

    @Autowired
    MockMvc pages;

    @Autowired
    JdbcClient jdbc;

    @Autowired
    PrintedSheets printed;

    @Autowired
    ApplicationContext context;

    private Plant plant;

    @BeforeEach
    void released() {
        plant = Plant.released(door);
        plant.say(
                "route",
                "1 00:01",
                Map.of(
                        "item",
                        "RCV",
                        "revision",
                        "A",
                        "operations",
                        List.of(Map.of(
                                "operation",
                                "bond",
                                "name",
                                "Bond the cell",
                                "consumes",
                                List.of("ADH"),
                                "stations",
                                List.of("BOND"),
                                "cautions",
                                List.of("chemical")))));
        plant.receipt("07:00", "A-17", "ADH", "LF-1");
        plant.birth("07:30", "RCV", "R0001", "R0002");
        new KnownPeople(context).add("op-7", Role.OPERATOR);
    }

    private Sheet print(String what, int count) throws Exception {
        String to = pages.perform(post("/forms/new")
                        .param("station", "BOND")
                        .param("what", what)
                        .param("count", "" + count))
                .andExpect(status().is3xxRedirection())
                .andReturn()
                .getResponse()
                .getRedirectedUrl();
        return printed.sheet(String.valueOf(to).replaceAll(".*code=", "")).orElseThrow();
    }

    private ResultActions enter(String record, Map<String, String> fields) throws Exception {
        Map<String, String> all = new TreeMap<>(Map.of(
                "id", record,
                "person", "op-7",
                "startedAt", "2026-03-10T10:15",
                "endedAt", "2026-03-10T10:20",
                "offset", "+01:00",
                "seconds", "1"));
        all.putAll(fields);
        var asked = post("/forms/record");
        all.forEach(asked::param);
        return pages.perform(asked);
    }

    private Map<String, String> bond() {
        return Map.of("box.unit", "R0001", "box.use.ADH", "A-17", "box.from.ADH", "V1", "sure", "on");
    }

    private int count(String sql) {
        return jdbc.sql(sql).query(Integer.class).single();
    }

    @Test
    void printsWhatTheRouteAsksFor() throws Exception {
        Sheet sheet = print("RCV  bond", 7);
        byte[] pdf = pages.perform(get("/forms/sheet.pdf").param("code", sheet.code()))
                .andExpect(status().isOk())
                .andReturn()
                .getResponse()
                .getContentAsByteArray();
        try (var document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document);
            assertThat(text)
                    .contains("Bond the cell", "bond on RCV", "Serial of RCV", "Lot or container of ADH", "Signature")
                    .contains("Adhesive")
                    .contains(sheet.records());
        }
        pages.perform(get("/forms")).andExpect(content().string(containsString("7 printed records are not entered")));
    }

    @Test
    void entersARecordOnceAsDoneByWhoWroteIt() throws Exception {
        String record = print("RCV  bond", 2).records().get(0);
        enter(record, bond()).andExpect(content().string(containsString("paper-" + record + ".1")));
        assertThat(jdbc.sql("SELECT actor || ' ' || recorded_by || ' ' || occurred_at FROM ledger.entry WHERE id = ?")
                        .param("paper-" + record + ".1")
                        .query(String.class)
                        .single())
                .isEqualTo("op-7 tester 2026-03-10 09:20:00+00");
        assertThat(count("SELECT count(*) FROM production.step_use")).isEqualTo(1);
        long entries = count("SELECT count(*) FROM ledger.entry");
        enter(record, bond()).andExpect(content().string(containsString("Nothing was changed")));
        assertThat(count("SELECT count(*) FROM ledger.entry")).isEqualTo((int) entries);
        pages.perform(get("/forms/record").param("id", record))
                .andExpect(content().string(containsString("Entered by tester")))
                .andExpect(content().string(not(containsString("box.unit"))));
        assertThat(printed.counted(9)).extracting(SheetCount::open).containsExactly(1);
    }

    private void serialsLookAlike() {
        plant.say(
                "item",
                "1 00:02",
                Map.of(
                        "item", "RCV",
                        "revision", "B",
                        "name", "Receiver",
                        "tracking", "serial",
                        "unitOfMeasure", "pcs",
                        "level", "receiver",
                        "serialPattern", "R####"));
    }

    @Test
    void entersOnceWhatMadeASerial() throws Exception {
        serialsLookAlike();
        String record = print("RCV  bond", 1).records().get(0);
        Map<String, String> made = new TreeMap<>(bond());
        made.put("box.unit", "R0777");
        enter(record, made).andExpect(content().string(containsString("paper-" + record + ".2")));
        int entries = count("SELECT count(*) FROM ledger.entry");
        enter(record, made).andExpect(content().string(containsString("Nothing was changed")));
        assertThat(count("SELECT count(*) FROM ledger.entry")).isEqualTo(entries);
        assertThat(count("SELECT count(*) FROM inbox.line_name")).isZero();
    }

    @Test
    void entersOnceWhatMeansMoreByThen() throws Exception {
        String record = print("RCV  bond", 1).records().get(0);
        Map<String, String> early = new TreeMap<>(bond());
        early.put("box.use.ADH", "A-99");
        enter(record, early).andExpect(content().string(containsString("paper-" + record + ".1")));
        plant.receipt("08:00", "A-99", "ADH", "LF-9");
        int entries = count("SELECT count(*) FROM ledger.entry");
        enter(record, early).andExpect(content().string(containsString("Nothing was changed")));
        assertThat(count("SELECT count(*) FROM ledger.entry")).isEqualTo(entries);
    }

    @Test
    void keepsInTheInboxWhatAnotherPaperSaysOfASerialItMade() throws Exception {
        serialsLookAlike();
        String record = print("RCV  bond", 1).records().get(0);
        Map<String, String> made = new TreeMap<>(bond());
        made.put("box.unit", "R0777");
        enter(record, made);
        Map<String, String> other = new TreeMap<>(made);
        other.put("startedAt", "2026-03-10T10:16");
        enter(record, other).andExpect(content().string(containsString("kept in the inbox")));
        assertThat(jdbc.sql("SELECT DISTINCT kind || ' ' || name FROM inbox.line_name WHERE kind = 'unit'")
                        .query(String.class)
                        .list())
                .containsExactly("unit R0777");
        assertThat(count("SELECT count(*) FROM inbox.line")).isEqualTo(2);
    }

    @Test
    void asksAboutEveryOddTime() throws Exception {
        String record = print("RCV  bond", 1).records().get(0);
        Map<String, String> odd = new TreeMap<>(bond());
        odd.remove("sure");
        odd.put("startedAt", "2026-03-10T10:30");
        enter(record, odd).andExpect(content().string(containsString("It ends before it begins")));
        odd.put("endedAt", "2099-01-01T10:00");
        odd.put("startedAt", "2099-01-01T11:00");
        enter(record, odd)
                .andExpect(content().string(containsString("It ends before it begins")))
                .andExpect(content().string(containsString("future")));
        assertThat(count("SELECT count(*) FROM paper.entered_record")).isZero();
    }

    @Test
    void keepsInTheInboxWhatAnotherPaperOfTheSameIdSays() throws Exception {
        String record = print("RCV  bond", 1).records().get(0);
        enter(record, bond());
        Map<String, String> other = new TreeMap<>(bond());
        other.put("box.unit", "R0002");
        enter(record, other).andExpect(content().string(containsString("kept in the inbox")));
        assertThat(count("SELECT count(*) FROM inbox.line_name WHERE name = 'R0002'"))
                .isEqualTo(1);
    }

    @Test
    void asksOnceAboutWhatResemblesAnotherAndThenRecordsIt() throws Exception {
        String record = print("RCV  bond", 1).records().get(0);
        Map<String, String> mistyped = new TreeMap<>(bond());
        mistyped.put("box.unit", "ROOO1");
        mistyped.remove("sure");
        enter(record, mistyped)
                .andExpect(content().string(containsString("Nothing recorded is called ROOO1")))
                .andExpect(content().string(containsString("RCV R0001")))
                .andExpect(content().string(containsString("0 and O")));
        assertThat(count("SELECT count(*) FROM paper.entered_record")).isZero();
        mistyped.put("sure", "on");
        enter(record, mistyped);
        assertThat(count("SELECT count(*) FROM production.unit WHERE serial = 'ROOO1'"))
                .isEqualTo(1);
    }

    @Test
    void keepsWhatCantBeUnderstoodUnderAllThatItNames() throws Exception {
        String record = print("SHIPMENT", 1).records().get(0);
        enter(
                        record,
                        Map.of(
                                "box.consignee",
                                "Far Customer",
                                "box.unit.1",
                                "R0001",
                                "box.unit.2",
                                "R9999",
                                "sure",
                                "on"))
                .andExpect(content().string(containsString("not understood, kept in the inbox")));
        assertThat(jdbc.sql("SELECT DISTINCT kind || ' ' || name FROM inbox.line_name ORDER BY 1")
                        .query(String.class)
                        .list())
                .containsExactly("unit R0001", "unit R9999");
        assertThat(printed.open()).isZero();
    }

    @Test
    void keepsWhatHasNoTime() throws Exception {
        String record = print("RCV  bond", 1).records().get(0);
        Map<String, String> timeless = new TreeMap<>(bond());
        timeless.put("endedAt", "");
        timeless.put("person", "somebody");
        enter(record, timeless)
                .andExpect(content().string(containsString("not understood, kept in the inbox")))
                .andExpect(content().string(containsString("Nobody can read who wrote")));
        assertThat(count("SELECT count(*) FROM production.step")).isZero();
    }

    @Test
    void recordsWithAFindingWhatARuleForbids() throws Exception {
        plant.say("hold", "08:00", Map.of("lots", List.of("A-17"), "reason", "Supplier's notice"));
        String record = print("CHARGE", 1).records().get(0);
        enter(record, Map.of("box.material", "A-17", "box.position", "V1", "sure", "on"))
                .andExpect(content().string(containsString("recorded, with a finding")));
        assertThat(count("SELECT count(*) FROM inbox.finding WHERE rule = 'lot-is-not-on-hold'"))
                .isEqualTo(1);
        assertThat(count("SELECT count(*) FROM materials.charge")).isEqualTo(1);
    }

    @Test
    void notesATimeThatIsCoarserThanTheClockCountsAs() throws Exception {
        String record = print("CLEAN_POINT", 1).records().get(0);
        enter(record, Map.of("box.position", "V1", "box.evidence", "Purged", "sure", "on", "seconds", "60"));
        assertThat(jdbc.sql("SELECT sentence FROM inbox.finding WHERE rule = 'paper-times-are-as-exact-as-the-clock'")
                        .query(String.class)
                        .single())
                .contains("right to 60 s", "right to 10 s");
    }

    @Test
    void takesARecordOfASheetThatIsNotKnownHere() throws Exception {
        String record = RecordId.first("7K3QM", 1).get(0).text();
        pages.perform(get("/forms/record").param("id", record).param("station", "BOND"))
                .andExpect(content().string(containsString("No sheet with this record is known here")));
        enter(
                record,
                Map.of(
                        "station",
                        "BOND",
                        "what",
                        "CHARGE",
                        "box.material",
                        "A-17",
                        "box.position",
                        "V1",
                        "sure",
                        "on"));
        assertThat(count("SELECT count(*) FROM materials.charge")).isEqualTo(1);
        assertThat(count("SELECT count(*) FROM inbox.finding WHERE rule = 'record-is-of-a-known-sheet'"))
                .isEqualTo(1);
    }

    @Test
    void saysWhatIsWrongWithAMistypedId() throws Exception {
        pages.perform(get("/forms/record").param("id", "7K3QM-24-X"))
                .andExpect(status().isOk())
                .andExpect(content().string(containsString("its check character does not fit")));
    }

    @Test
    void voidsABlankRecordAndNotOneThatWasEntered() throws Exception {
        Sheet sheet = print("CHARGE", 2);
        enter(sheet.records().get(0), Map.of("box.material", "A-17", "box.position", "V1", "sure", "on"));
        giveUp(sheet, sheet.records().get(0), "BLANK")
                .andExpect(content().string(containsString("was entered before")));
        giveUp(sheet, sheet.records().get(1), "BLANK").andExpect(status().is3xxRedirection());
        assertThat(printed.open()).isZero();
        enter(sheet.records().get(1), Map.of("box.material", "A-17", "box.position", "V2", "sure", "on"));
        assertThat(count("SELECT count(*) FROM inbox.finding WHERE rule = 'void-record-is-not-entered'"))
                .isEqualTo(1);
    }

    @Test
    void leavesAFindingForALostRecord() throws Exception {
        Sheet sheet = print("CHARGE", 1);
        giveUp(sheet, sheet.records().get(0), "LOST");
        assertThat(count("SELECT count(*) FROM inbox.finding WHERE rule = 'lost-record-may-hide-a-happening'"))
                .isEqualTo(1);
    }

    private ResultActions giveUp(Sheet sheet, String record, String fate) throws Exception {
        return pages.perform(post("/forms/sheet")
                .param("code", sheet.code())
                .param("id", "void-" + record)
                .param("records", record)
                .param("fate", fate)
                .param("why", "Counted with the shift lead"));
    }

    @Test
    @SignedInAs(Role.AUDITOR)
    void showsAnAuditorTheListWithoutForms() throws Exception {
        pages.perform(get("/forms"))
                .andExpect(status().isOk())
                .andExpect(content().string(not(containsString("/forms/new"))));
        pages.perform(get("/forms/new")).andExpect(status().isForbidden());
    }
}
