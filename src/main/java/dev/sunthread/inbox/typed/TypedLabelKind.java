package dev.sunthread.inbox.typed;

import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** A label that could not be read was typed by one person and typed again by another. */
@Component
class TypedLabelKind implements Kind<TypedLabelKind.Body> {

    record Body(
            @Field("What both typed") String text,
            @Field("The station where they did") String station,

            @Field("The mark of who typed it again without seeing it; who typed it first is the actor")
            String confirmedBy) {}

    private final TypedLabels labels;
    private final JdbcClient jdbc;

    TypedLabelKind(TypedLabels labels, JdbcClient jdbc) {
        this.labels = labels;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "typed-label";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A label could not be read: one person typed what it says, another typed it again and it was the same. What is"
                + " recorded next at that station and names it refers to this.";
    }

    @Override
    public void record(Fact<Body> fact) {
        typedLabelIsConfirmedByAnother(fact);
        jdbc.sql("""
                        INSERT INTO inbox.typed_label (entry, text, station, typed_by, confirmed_by, typed_at)
                        VALUES (?, ?, ?, ?, ?, ?)
                        """)
                .params(fact.entry(), fact.body().text(), fact.body().station(), fact.actor())
                .params(fact.body().confirmedBy(), fact.occurredAt())
                .update();
        labels.changed();
    }

    private static void typedLabelIsConfirmedByAnother(Fact<Body> fact) {
        if (fact.actor().equals(fact.body().confirmedBy())) {
            fact.breaks(
                    "typed-label-is-confirmed-by-another",
                    "The same person typed the label \"" + fact.body().text() + "\" twice",
                    "Have another person type it again");
        }
    }
}
