package dev.sunthread.inbox;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.ledger.Decisions;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import dev.sunthread.ledger.body.Unreadable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Settles a finding; what was wrong is voided, corrected or recorded beside it. */
@Component
@Needs(Right.JUDGE)
class FindingSettlementKind implements Kind<FindingSettlementKind.Body> {

    record Body(
            @Field(value = "The id of the envelope that raised the finding", text = TextForm.ID)
            String entry,

            @Field(value = "Which finding of that envelope, from 1", positive = true)
            int finding,

            @Field(value = "What was found out and done", text = TextForm.NOTE)
            String why) {}

    private final Decisions decisions;
    private final JdbcClient jdbc;

    FindingSettlementKind(Decisions decisions, JdbcClient jdbc) {
        this.decisions = decisions;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "finding-settlement";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A finding is settled by a person, who says what was found out and done.";
    }

    @Override
    public void record(Fact<Body> fact) {
        findingIsSettledOnce(fact);
        int settled = jdbc.sql("""
                        INSERT INTO inbox.finding_settlement (entry, finding_entry, finding_ordinal, why)
                        SELECT ?, f.entry, f.ordinal, ?
                        FROM inbox.finding f JOIN ledger.entry e ON e.number = f.entry WHERE e.id = ? AND f.ordinal = ?
                        """)
                .params(
                        fact.entry(),
                        fact.body().why(),
                        fact.body().entry(),
                        fact.body().finding())
                .update();
        if (settled == 0) {
            throw Unreadable.at(
                    "body.entry",
                    "\"" + fact.body().entry() + "\" has no finding "
                            + fact.body().finding(),
                    "Give the id and number that the findings page shows");
        }
    }

    private void findingIsSettledOnce(Fact<Body> fact) {
        Body body = fact.body();
        decisions
                .before(
                        fact,
                        "inbox.finding_settlement",
                        "d.finding_entry = (SELECT number FROM ledger.entry WHERE id = ?) AND d.finding_ordinal = ?",
                        body.entry(),
                        body.finding())
                .ifPresent(first -> fact.breaks(
                        "finding-is-settled-once",
                        "Finding " + body.finding() + " of " + body.entry() + " was settled before " + first,
                        "Read what was found out; if it is wrong, void that settlement first"));
    }
}
