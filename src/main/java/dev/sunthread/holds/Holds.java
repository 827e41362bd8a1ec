package dev.sunthread.holds;

import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Known;
import dev.sunthread.ledger.Remembered;
import dev.sunthread.ledger.SoleWriter;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Holds: placed one by one, each released by its own decision. */
@Repository
public class Holds {

    /**
     * What a transaction that records alone keeps of things that open holds touch, for whoever computes it; each hold and
     * release clears it.
     */
    public static final String TOUCHED = "touched by holds";

    private static final String HOLDS = "holds";

    private final SoleWriter sole;
    private final JdbcClient jdbc;

    Holds(SoleWriter sole, JdbcClient jdbc) {
        this.sole = sole;
        this.jdbc = jdbc;
    }

    /** Places a hold as part of what is being recorded. */
    public void place(Fact<?> fact, TraceRef subject, String reason) {
        jdbc.sql("""
                        INSERT INTO holds.hold (entry, ordinal, kind, subject, reason)
                        SELECT :entry, 1 + (SELECT count(*) FROM holds.hold WHERE entry = :entry), :kind, :subject, :reason
                        """)
                .param("entry", fact.entry())
                .param("kind", subject.kind().name())
                .param("subject", subject.id())
                .param("reason", reason)
                .update();
        sole.known(HOLDS).remove(subject);
        sole.known(TOUCHED).clear();
    }

    /** Says that these things were not there before a transaction that records alone, so that no hold is on them. */
    public void begin(TraceKind kind, Collection<Long> subjects) {
        Map<TraceRef, List<OpenHold>> known = sole.known(HOLDS);
        subjects.forEach(subject -> known.put(new TraceRef(kind, subject), List.of()));
    }

    /** The reasons why this may not move on; empty if it may. */
    public List<OpenHold> on(TraceRef subject) {
        return on(subject.kind(), List.of(subject.id())).getOrDefault(subject.id(), List.of());
    }

    /** The reasons why each of these may not move on, asked at once; those that may are not among them. */
    public Map<Long, List<OpenHold>> on(TraceKind kind, Collection<Long> subjects) {
        List<TraceRef> things =
                subjects.stream().map(subject -> new TraceRef(kind, subject)).toList();
        Map<Long, List<OpenHold>> open = new HashMap<>();
        Remembered.each(sole.<TraceRef, List<OpenHold>>known(HOLDS), things, unknown -> ofEach(kind, unknown))
                .forEach((thing, holds) -> {
                    if (!holds.isEmpty()) {
                        open.put(thing.id(), holds);
                    }
                });
        return open;
    }

    private Map<TraceRef, List<OpenHold>> ofEach(TraceKind kind, Collection<TraceRef> things) {
        Map<Long, List<OpenHold>> open =
                asked(kind, things.stream().map(TraceRef::id).toList());
        return things.stream()
                .collect(Collectors.toMap(thing -> thing, thing -> open.getOrDefault(thing.id(), List.of())));
    }

    private Map<Long, List<OpenHold>> asked(TraceKind kind, Collection<Long> subjects) {
        return jdbc
                .sql("""
                        SELECT e.id AS entry, h.ordinal, h.kind, h.subject, h.reason, e.occurred_at AS since
                        FROM holds.hold h JOIN ledger.entry e ON e.number = h.entry
                        WHERE h.kind = :kind AND h.subject = ANY (:subjects) AND %s AND NOT EXISTS (
                          SELECT FROM holds.release r
                          WHERE r.hold_entry = h.entry AND r.hold_ordinal = h.ordinal AND %s)
                        ORDER BY h.entry, h.ordinal
                        """.formatted(Known.now("h.entry"), Known.now("r.entry")))
                .param("kind", kind.name())
                .param("subjects", subjects.toArray(Long[]::new))
                .query(DataClassRowMapper.newInstance(OpenHold.class))
                .list()
                .stream()
                .collect(Collectors.groupingBy(OpenHold::subject));
    }

    void released() {
        sole.known(HOLDS).clear();
        sole.known(TOUCHED).clear();
    }

    /** Every open hold, the newest first, at most so many. */
    public List<OpenHold> open(long cutoff, int most) {
        return jdbc.sql("SELECT * FROM (" + KNOWN + ") open ORDER BY since DESC, entry, ordinal LIMIT :most")
                .param("cutoff", cutoff)
                .param("most", most)
                .query(DataClassRowMapper.newInstance(OpenHold.class))
                .list();
    }

    /** The query that gives every open hold at the parameter {@code cutoff}, for reports that join it. */
    public static final String KNOWN = """
            SELECT e.id AS entry, h.ordinal, h.kind, h.subject, h.reason, e.occurred_at AS since
            FROM holds.hold h JOIN ledger.entry e ON e.number = h.entry
            WHERE %s AND NOT EXISTS (
              SELECT FROM holds.release r WHERE r.hold_entry = h.entry AND r.hold_ordinal = h.ordinal AND %s)
            """.formatted(Known.at("h.entry"), Known.at("r.entry"));
}
