package dev.sunthread.inbox.typed;

import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Known;
import dev.sunthread.ledger.SoleWriter;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Labels that two persons typed, and what was recorded by them. */
@Repository
public class TypedLabels {

    /** Long enough to complete what was typed for; what comes later was read from another label. */
    private static final String A_WHILE = "interval '1 hour'";

    private static final String TYPED_LABELS = "typed labels";

    private static final String NAME = """
            INSERT INTO inbox.typed_label_use (entry, typed)
            SELECT :entry, t.entry FROM inbox.typed_label t
            WHERE t.text = ANY (:texts) AND t.station = :station AND %s
              AND t.typed_at BETWEEN cast(:at AS timestamptz) - %s AND :at
              AND NOT EXISTS (
                SELECT FROM inbox.typed_label_use u JOIN ledger.entry other ON other.number = u.entry
                JOIN ledger.entry this ON this.number = :entry
                WHERE u.typed = t.entry AND other.kind = this.kind)
            """.formatted(Known.now("t.entry"), A_WHILE);

    /**
     * A label that was typed.
     *
     * @param id of the envelope that says so
     * @param namedBy the ids of what was recorded by it
     */
    public record Typed(
            String id, OffsetDateTime at, String station, String typedBy, String confirmedBy, List<String> namedBy) {}

    private final SoleWriter sole;
    private final JdbcClient jdbc;

    TypedLabels(SoleWriter sole, JdbcClient jdbc) {
        this.sole = sole;
        this.jdbc = jdbc;
    }

    /**
     * Has what is being recorded name the labels that were typed for it: at its station, shortly before, with one of these
     * texts. Each is named once by each kind of record.
     */
    public void name(Fact<?> fact, @Nullable String station, Collection<@Nullable String> texts) {
        String[] said = texts.stream().filter(Objects::nonNull).distinct().toArray(String[]::new);
        if (station == null || said.length == 0 || sole.isSole() && !areAny()) {
            return;
        }
        jdbc.sql(NAME)
                .param("entry", fact.entry())
                .param("texts", said)
                .param("station", station)
                .param("at", fact.occurredAt())
                .update();
    }

    private boolean areAny() {
        return sole.<String, Boolean>known(TYPED_LABELS)
                .computeIfAbsent(
                        TYPED_LABELS,
                        any -> jdbc.sql("SELECT EXISTS (SELECT FROM inbox.typed_label)")
                                .query(Boolean.class)
                                .single());
    }

    void changed() {
        sole.known(TYPED_LABELS).clear();
    }

    /** Where a text was typed as a label, the latest first. */
    public List<Typed> of(String text, long cutoff) {
        return jdbc.sql("""
                        SELECT e.id, t.typed_at, t.station, t.typed_by, t.confirmed_by,
                          array(SELECT n.id FROM inbox.typed_label_use u JOIN ledger.entry n ON n.number = u.entry
                                WHERE u.typed = t.entry AND %s ORDER BY n.number)
                        FROM inbox.typed_label t JOIN ledger.entry e ON e.number = t.entry
                        WHERE t.text = :text AND %s ORDER BY t.typed_at DESC, t.entry DESC LIMIT 50
                        """.formatted(Known.at("u.entry"), Known.at("t.entry")))
                .param("text", text)
                .param("cutoff", cutoff)
                .query((row, number) -> new Typed(
                        row.getString(1),
                        row.getObject(2, OffsetDateTime.class),
                        row.getString(3),
                        row.getString(4),
                        row.getString(5),
                        List.of((String[]) row.getArray(6).getArray())))
                .list();
    }
}
