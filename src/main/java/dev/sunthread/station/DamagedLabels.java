package dev.sunthread.station;

import dev.sunthread.access.SecondPersons;
import dev.sunthread.inbox.typed.LabelTyping;
import dev.sunthread.kernel.Refused;
import dev.sunthread.ledger.body.TextForm;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.UUID;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Labels that can't be read: the person at the station types what one says, another proves who it is and types it again
 * without seeing it. Only if both are the same it is recorded, and can be taken as a scan.
 */
@Service
public class DamagedLabels {

    /** What comes next. */
    public enum Stage {
        FIRST,
        OTHER,
        AGAIN
    }

    /** What both typed: the text, and the id of the envelope that says so. */
    public record Confirmed(String id, String text, String confirmedBy) {}

    private record Begun(String text, Optional<String> confirmedBy) {}

    private final LabelTyping labels;
    private final SecondPersons second;
    private final Clock clock;
    private final JdbcClient jdbc;

    DamagedLabels(LabelTyping labels, SecondPersons second, Clock clock, JdbcClient jdbc) {
        this.labels = labels;
        this.second = second;
        this.clock = clock;
        this.jdbc = jdbc;
    }

    /** What a person at a station has to do next. */
    public Stage stage(String station, String person) {
        return begun(station, person)
                .map(begun -> begun.confirmedBy().isPresent() ? Stage.AGAIN : Stage.OTHER)
                .orElse(Stage.FIRST);
    }

    /** Begins with what a person reads. @throws Refused if no label can say that */
    @Transactional
    public void first(String station, String person, String text) {
        if (!TextForm.CODE.fits(text.strip())) {
            throw new Refused("No label says \"" + text.strip() + "\"", "Type its text: " + TextForm.CODE.described());
        }
        forget(station, person);
        jdbc.sql("INSERT INTO station.typing (station, person, text, begun_at) VALUES (?, ?, ?, ?)")
                .params(station, person, text.strip(), OffsetDateTime.now(clock))
                .update();
    }

    /** Proves who the other person is. @throws Refused if that can't be proven */
    public void other(String station, String person, String badge, String pin) {
        jdbc.sql("UPDATE station.typing SET confirmed_by = ? WHERE station = ? AND person = ?")
                .params(second.proven(badge, pin, station), station, person)
                .update();
    }

    /** What the other person reads; empty if it is not the same, and then both begin anew. */
    @Transactional
    public Optional<Confirmed> again(String station, String person, String text) {
        Begun begun = begun(station, person).orElseThrow(DamagedLabels::tooLate);
        String confirmer = begun.confirmedBy().orElseThrow(DamagedLabels::tooLate);
        forget(station, person);
        if (!begun.text().equals(text.strip())) {
            return Optional.empty();
        }
        String id = "typed-" + UUID.randomUUID();
        labels.typed(id, begun.text(), station, person, confirmer);
        return Optional.of(new Confirmed(id, begun.text(), confirmer));
    }

    private static Refused tooLate() {
        return new Refused("Nothing was typed yet, or it was put aside", "Begin with what the label says");
    }

    /** Puts aside what was typed so far. */
    public void forget(String station, String person) {
        jdbc.sql("DELETE FROM station.typing WHERE station = ? AND person = ?")
                .params(station, person)
                .update();
    }

    private Optional<Begun> begun(String station, String person) {
        return jdbc.sql("SELECT text, confirmed_by FROM station.typing WHERE station = ? AND person = ?")
                .params(station, person)
                .query((row, number) -> new Begun(row.getString(1), Optional.ofNullable(row.getString(2))))
                .optional();
    }
}
