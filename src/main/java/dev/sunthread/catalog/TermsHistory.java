package dev.sunthread.catalog;

import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Remembered;
import dev.sunthread.ledger.body.Shape;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.jdbc.core.simple.JdbcClient;
import tools.jackson.databind.json.JsonMapper;

/**
 * Revisions of recipes or specifications, each with its terms as the envelope said them. What is released never changes,
 * so terms once read are kept.
 */
public abstract class TermsHistory<T> {

    private final String thing;
    private final Class<T> type;
    private final JdbcClient jdbc;
    private final Remembered remembered;
    private final ApplicationEventPublisher events;

    TermsHistory(
            String thing, Class<T> type, Remembered remembered, ApplicationEventPublisher events, JdbcClient jdbc) {
        this.thing = thing;
        this.events = events;
        this.remembered = remembered;
        this.type = type;
        this.jdbc = jdbc;
    }

    void record(Fact<?> fact, T terms) {
        jdbc.sql("INSERT INTO catalog.%1$s_terms (entry, terms) VALUES (?, ?::jsonb)".formatted(thing))
                .params(fact.entry(), Shape.of(type).write(terms).toString())
                .update();
        events.publishEvent(new TermsReleased(fact, thing));
    }

    /** The internal number behind a code, if it was ever released. */
    public Optional<Long> find(String code) {
        return jdbc.sql("SELECT id FROM catalog.%1$s WHERE code = ?".formatted(thing))
                .param(code)
                .query(Long.class)
                .optional();
    }

    /** Every revision that states something for computation, the last to be in force first. */
    public List<ReleasedTerms<T>> of(long id) {
        return jdbc.sql("""
                        SELECT r.entry, r.revision, r.name, r.effective_at, t.terms
                        FROM catalog.%1$s_revision r JOIN catalog.%1$s_terms t USING (entry)
                        WHERE r.%1$s = ? ORDER BY r.effective_at DESC, r.entry DESC
                        """.formatted(thing))
                .param(id)
                .query((row, number) -> new ReleasedTerms<>(
                        row.getLong(1),
                        row.getString(2),
                        row.getString(3),
                        row.getObject(4, OffsetDateTime.class),
                        terms(row.getLong(1), row.getString(5))))
                .list();
    }

    /** A revision by its name. */
    public Optional<ReleasedTerms<T>> of(long id, String revision) {
        return of(id).stream()
                .filter(released -> released.revision().equals(revision))
                .findFirst();
    }

    /** What the revision released by an entry states. */
    public T terms(long entry) {
        T known = read().get(entry);
        return known != null
                ? known
                : terms(
                        entry,
                        jdbc.sql("SELECT terms FROM catalog.%1$s_terms WHERE entry = ?".formatted(thing))
                                .param(entry)
                                .query(String.class)
                                .single());
    }

    private T terms(long entry, String json) {
        return read().computeIfAbsent(
                        entry, asked -> Shape.of(type).read(JsonMapper.shared().readTree(json), "terms"));
    }

    private Map<Long, T> read() {
        return remembered.of("terms of " + thing);
    }
}
