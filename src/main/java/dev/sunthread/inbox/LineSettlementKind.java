package dev.sunthread.inbox;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.ledger.Decisions;
import dev.sunthread.ledger.Entries;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.NamedEntry;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import dev.sunthread.ledger.body.Unreadable;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Settles a kept line: it was sent again in order, or a person says why it tells nothing. */
@Component
@Needs(Right.JUDGE)
class LineSettlementKind implements Kind<LineSettlementKind.Body> {

    record Body(
            @Field(value = "The id of the envelope that keeps the line", text = TextForm.ID)
            String line,

            @Field(value = "The id it was recorded under, if it was sent again", text = TextForm.ID) @Nullable
            String resubmittedAs,

            @Field(value = "What was mended, or why the line tells nothing", text = TextForm.NOTE)
            String why) {}

    private final Entries entries;
    private final Decisions decisions;
    private final JdbcClient jdbc;

    LineSettlementKind(Entries entries, Decisions decisions, JdbcClient jdbc) {
        this.decisions = decisions;
        this.entries = entries;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "line-settlement";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A kept line is settled: it was sent again in order, or it tells nothing.";
    }

    @Override
    public void record(Fact<Body> fact) {
        NamedEntry line = entries.named(fact.body().line())
                .filter(entry -> entry.kind().equals("kept-line"))
                .orElseThrow(() -> Unreadable.at(
                        "body.line",
                        "\"" + fact.body().line() + "\" keeps no line",
                        "Give the id of an envelope of kind kept-line"));
        lineIsSettledOnce(fact, line);
        jdbc.sql("INSERT INTO inbox.line_settlement (entry, line, resubmitted_as, why) VALUES (?, ?, ?, ?)")
                .params(fact.entry(), line.number())
                .param(fact.body().resubmittedAs())
                .param(fact.body().why())
                .update();
    }

    private void lineIsSettledOnce(Fact<Body> fact, NamedEntry line) {
        decisions
                .before(fact, "inbox.line_settlement", "d.line = ?", line.number())
                .ifPresent(first -> fact.breaks(
                        "line-is-settled-once",
                        "Line " + line.id() + " was settled before " + first,
                        "Read what was said of it; if it is wrong, void that settlement first"));
    }
}
