package dev.sunthread.holds;

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

/** Takes one reason for holding away; others stay. */
@Component
@Needs(Right.JUDGE)
class ReleaseKind implements Kind<ReleaseKind.Body> {

    record Body(
            @Field(value = "The id of the envelope that placed the hold", text = TextForm.ID)
            String entry,

            @Field(value = "Which hold of that envelope, from 1", positive = true)
            int hold,

            @Field(value = "Why it may move on", text = TextForm.NOTE)
            String why) {}

    private final Holds holds;
    private final Decisions decisions;
    private final JdbcClient jdbc;

    ReleaseKind(Holds holds, Decisions decisions, JdbcClient jdbc) {
        this.decisions = decisions;
        this.holds = holds;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "hold-release";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "One hold is released; other holds on the same thing stay.";
    }

    @Override
    public void record(Fact<Body> fact) {
        holdIsReleasedOnce(fact);
        int released = jdbc.sql("""
                        INSERT INTO holds.release (entry, hold_entry, hold_ordinal, why)
                        SELECT ?, h.entry, h.ordinal, ?
                        FROM holds.hold h JOIN ledger.entry e ON e.number = h.entry WHERE e.id = ? AND h.ordinal = ?
                        """)
                .params(
                        fact.entry(),
                        fact.body().why(),
                        fact.body().entry(),
                        fact.body().hold())
                .update();
        holds.released();
        if (released == 0) {
            throw Unreadable.at(
                    "body.entry",
                    "\"" + fact.body().entry() + "\" placed no hold "
                            + fact.body().hold(),
                    "Give the id and number that the hold shows");
        }
    }

    private void holdIsReleasedOnce(Fact<Body> fact) {
        Body body = fact.body();
        decisions
                .before(
                        fact,
                        "holds.release",
                        "d.hold_entry = (SELECT number FROM ledger.entry WHERE id = ?) AND d.hold_ordinal = ?",
                        body.entry(),
                        body.hold())
                .ifPresent(first -> fact.breaks(
                        "hold-is-released-once",
                        "Hold " + body.hold() + " of " + body.entry() + " was released before " + first,
                        "Look at the holds that are left; place a new one if it was released by mistake"));
    }
}
