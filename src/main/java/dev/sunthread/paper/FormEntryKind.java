package dev.sunthread.paper;

import dev.sunthread.catalog.Stations;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.Known;
import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** A record on paper was entered. */
@Component
class FormEntryKind implements Kind<FormEntry> {

    private final Stations stations;
    private final JdbcClient jdbc;

    FormEntryKind(Stations stations, JdbcClient jdbc) {
        this.stations = stations;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "form-entry";
    }

    @Override
    public Class<FormEntry> body() {
        return FormEntry.class;
    }

    @Override
    public String meaning() {
        return "A record that was written on paper was entered. Its actor is who wrote it, who entered it is who recorded it.";
    }

    @Override
    public boolean withdrawable() {
        return false;
    }

    @Override
    public void record(Fact<FormEntry> fact) {
        long station = stations.named(fact.body().station(), "body.station").id();
        recordIsOfAKnownSheet(fact);
        voidRecordIsNotEntered(fact);
        paperTimesAreAsExactAsTheClock(fact, station);
        writerOfARecordIsKnown(fact);
        jdbc.sql("INSERT INTO paper.entered_record (entry, record) VALUES (?, ?)")
                .params(fact.entry(), fact.body().record())
                .update();
    }

    private void recordIsOfAKnownSheet(Fact<FormEntry> fact) {
        Optional<OffsetDateTime> printed = jdbc.sql("""
                        SELECT min(s.printed_at) FROM paper.printed_record r JOIN paper.sheet s ON s.entry = r.entry
                        WHERE r.record = ? AND %s HAVING count(*) > 0
                        """.formatted(Known.now("r.entry")))
                .param(fact.body().record())
                .query(OffsetDateTime.class)
                .optional();
        if (printed.isEmpty()) {
            fact.shows(
                    "record-is-of-a-known-sheet",
                    "Record " + fact.body().record() + " is of no sheet whose printing is recorded here",
                    "Look at the paper again: if it was printed before a restore, settle this");
        } else if (fact.occurredAt().isBefore(printed.get())) {
            fact.shows(
                    "record-is-written-after-printing",
                    "Record " + fact.body().record() + " tells of a time before it was printed",
                    "Compare date, time and offset with the paper and correct what was entered");
        }
    }

    private void voidRecordIsNotEntered(Fact<FormEntry> fact) {
        jdbc.sql("SELECT v.why FROM paper.void_record v WHERE v.record = ? AND " + Known.now("v.entry")
                        + " ORDER BY v.entry LIMIT 1")
                .param(fact.body().record())
                .query(String.class)
                .optional()
                .ifPresent(why -> fact.breaks(
                        "void-record-is-not-entered",
                        "Record " + fact.body().record() + " was said not to be entered: " + why,
                        "Find out which is true; void what was entered of it, or the word that it was void"));
    }

    private void paperTimesAreAsExactAsTheClock(Fact<FormEntry> fact, long station) {
        jdbc.sql("""
                        SELECT v.clock_uncertainty FROM catalog.station_revision v
                        WHERE v.station = ? AND v.effective_at <= ? ORDER BY v.effective_at DESC, v.entry DESC LIMIT 1
                        """)
                .params(station, fact.occurredAt())
                .query(BigDecimal.class)
                .optional()
                .filter(clock -> clock.compareTo(BigDecimal.valueOf(fact.body().seconds())) < 0)
                .ifPresent(clock -> fact.shows(
                        "paper-times-are-as-exact-as-the-clock",
                        "The times on record " + fact.body().record() + " are right to "
                                + fact.body().seconds() + " s, but those of station "
                                + fact.body().station() + " count as right to "
                                + clock.stripTrailingZeros().toPlainString() + " s",
                        "Find out the time more exactly and correct it, or release a revision of the station, in force at"
                                + " that time, whose clock uncertainty covers it"));
    }

    private static void writerOfARecordIsKnown(Fact<FormEntry> fact) {
        if (fact.actor().equals(FormEntry.UNREADABLE)) {
            fact.shows(
                    "writer-of-a-record-is-known",
                    "Nobody can read who wrote record " + fact.body().record(),
                    "Find out by the roster or the signature, and say so when settling this");
        }
    }
}
