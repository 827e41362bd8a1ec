package dev.sunthread.ledger;

import java.time.Duration;
import java.time.OffsetDateTime;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Finds what is told to have happened after it was recorded, beyond what clocks may differ: some time in it is wrong. */
@Component
class Ahead {

    private final Duration tolerance;
    private final JdbcClient jdbc;

    Ahead(@Value("${sunthread.ledger.ahead}") Duration tolerance, JdbcClient jdbc) {
        this.tolerance = tolerance;
        this.jdbc = jdbc;
    }

    /** Notes a happening that was recorded before it occurred; a definition may well be released ahead. */
    void happeningIsNotInTheFuture(Kind<?> kind, Fact<?> fact, OffsetDateTime recordedAt) {
        if (!kind.takesEffectLater() && fact.occurredAt().isAfter(recordedAt.plus(tolerance))) {
            fact.shows(
                    "happening-is-not-in-the-future",
                    "It is told to happen at " + fact.occurredAt() + ", but was recorded at "
                            + recordedAt.withOffsetSameInstant(fact.occurredAt().getOffset()),
                    "Find out which clock or date is wrong, and correct the time");
        }
    }

    /** The same of a happening that another entry tells. */
    void happeningIsNotInTheFuture(Kind<?> kind, Fact<?> fact) {
        happeningIsNotInTheFuture(
                kind,
                fact,
                jdbc.sql("SELECT recorded_at FROM ledger.entry WHERE number = ?")
                        .param(fact.entry())
                        .query(OffsetDateTime.class)
                        .single());
    }
}
