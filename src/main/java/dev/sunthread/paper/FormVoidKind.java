package dev.sunthread.paper;

import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.Known;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Printed records that nobody will enter. */
@Component
class FormVoidKind implements Kind<FormVoidKind.Body> {

    record Body(
            @Field(value = "The ids of the records", atLeast = 1, atMost = 60)
            List<String> records,

            @Field("What became of them: nothing is written on them, it is written on another record, or they are lost")
            Fate fate,

            @Field(value = "How that is known", text = TextForm.NOTE)
            String why) {}

    private final JdbcClient jdbc;

    FormVoidKind(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "form-void";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "Printed records will not be entered. What a lost one told is unknown, which a person has to settle.";
    }

    @Override
    public void record(Fact<Body> fact) {
        enteredRecordIsNotVoid(fact);
        lostRecordMayHideAHappening(fact);
        for (String record : fact.body().records().stream().distinct().toList()) {
            jdbc.sql("INSERT INTO paper.void_record (entry, record, what, why) VALUES (?, ?, ?, ?)")
                    .params(fact.entry(), record)
                    .params(fact.body().fate().name(), fact.body().why())
                    .update();
        }
    }

    private void enteredRecordIsNotVoid(Fact<Body> fact) {
        List<String> entered = jdbc.sql(
                        "SELECT e.record FROM paper.entered_record e WHERE e.record = ANY (:records) AND "
                                + Known.now("e.entry") + " ORDER BY 1")
                .param("records", fact.body().records().toArray(String[]::new))
                .query(String.class)
                .list();
        if (!entered.isEmpty()) {
            fact.breaks(
                    "entered-record-is-not-void",
                    "Record " + entered.get(0) + " was entered before",
                    "Leave it as it is; if it tells nothing true, void or correct what was entered of it");
        }
    }

    private static void lostRecordMayHideAHappening(Fact<Body> fact) {
        if (fact.body().fate() == Fate.LOST) {
            fact.shows(
                    "lost-record-may-hide-a-happening",
                    "Lost on paper: " + String.join(", ", fact.body().records()),
                    "Ask who worked there what they wrote, and record it as told; then settle this");
        }
    }
}
