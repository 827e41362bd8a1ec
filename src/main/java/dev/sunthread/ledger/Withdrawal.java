package dev.sunthread.ledger;

import dev.sunthread.ledger.body.Unreadable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Takes an entry back: it stays in the ledger, and no reading from now on believes it. */
@Component
class Withdrawal {

    private final JdbcClient jdbc;
    private final Entries entries;
    private final SoleWriter sole;
    private final ObjectProvider<Kinds> kinds;

    Withdrawal(JdbcClient jdbc, Entries entries, SoleWriter sole, ObjectProvider<Kinds> kinds) {
        this.jdbc = jdbc;
        this.entries = entries;
        this.sole = sole;
        this.kinds = kinds;
    }

    /** Withdraws the entry with this id and gives it. */
    NamedEntry withdraw(Fact<?> fact, String id, String why) {
        NamedEntry target = entries.named(id)
                .filter(entry -> entry.number() != fact.entry())
                .orElseThrow(() -> Unreadable.at(
                        "body.entry",
                        "\"" + id + "\" is no entry of this ledger",
                        "Give the id of a recorded envelope"));
        Kind<?> kind = kinds.getObject().get(target.kind(), target.kindVersion());
        if (!kind.withdrawable()) {
            throw Unreadable.at(
                    "body.entry",
                    "an entry of kind \"" + kind.name() + "\" can't be taken back",
                    "Record what is true now with an envelope of its own, such as the next revision");
        }
        entryIsWithdrawnOnce(fact, target);
        jdbc.sql("INSERT INTO ledger.withdrawal (entry, target, why) VALUES (?, ?, ?)")
                .params(fact.entry(), target.number(), why)
                .update();
        sole.forget();
        kind.withdrawn(target.number());
        return target;
    }

    private void entryIsWithdrawnOnce(Fact<?> fact, NamedEntry target) {
        boolean before = jdbc.sql("SELECT 1 FROM ledger.withdrawal WHERE target = ? LIMIT 1")
                .param(target.number())
                .query(Integer.class)
                .optional()
                .isPresent();
        if (before) {
            fact.breaks(
                    "entry-is-withdrawn-once",
                    "Entry " + target.id() + " was voided or corrected before",
                    "Look at what replaced it and void that if it is wrong too");
        }
    }
}
