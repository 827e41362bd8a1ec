package dev.sunthread.holds;

import dev.sunthread.access.Needs;
import dev.sunthread.access.Right;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.Unreadable;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Releases which rules a person may pass by signature; every other rule is hard. */
@Component
@Needs(Right.DEFINE)
class SoftRulesKind implements Kind<SoftRulesKind.Body> {

    record Body(
            @Field("The revision that is released") String revision,

            @Field(value = "The rules that may be passed; none if none is named", atMost = 100)
            List<SoftRule> rules) {}

    private final JdbcClient jdbc;

    SoftRulesKind(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "soft-rules";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public boolean takesEffectLater() {
        return true;
    }

    @Override
    public boolean withdrawable() {
        return false;
    }

    @Override
    public String meaning() {
        return "A revision of the list of rules that a person may pass by signature is released; it is in force from when"
                + " it occurred, whole, and every other rule can't be passed.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        revisionIsReleasedOnce(body.revision());
        jdbc.sql("INSERT INTO holds.soft_rules_revision (entry, revision, effective_at) VALUES (?, ?, ?)")
                .params(fact.entry(), body.revision(), fact.occurredAt())
                .update();
        for (SoftRule rule : body.rules()) {
            jdbc.sql("INSERT INTO holds.soft_rule (entry, rule) VALUES (?, ?) ON CONFLICT DO NOTHING")
                    .params(fact.entry(), rule.word())
                    .update();
        }
    }

    private void revisionIsReleasedOnce(String revision) {
        boolean released = jdbc.sql("SELECT 1 FROM holds.soft_rules_revision WHERE revision = ?")
                .param(revision)
                .query(Integer.class)
                .optional()
                .isPresent();
        if (released) {
            throw Unreadable.at(
                    "body.revision",
                    "revision \"" + revision + "\" is released already and is never changed",
                    "Release the change under a next revision");
        }
    }
}
