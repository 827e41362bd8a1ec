package dev.sunthread.holds;

import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Known;
import dev.sunthread.ledger.SoleWriter;
import java.sql.Types;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Which rules people signed to be passed, for which things and operations. */
@Repository
public class Passes {

    /** The list of rules that may be passed, as in force at a time. */
    private static final String IN_FORCE = """
            (SELECT r.rule FROM holds.soft_rule r WHERE r.entry = (
              SELECT v.entry FROM holds.soft_rules_revision v WHERE v.effective_at <= %s
              ORDER BY v.effective_at DESC, v.entry DESC LIMIT 1))
            """;

    private static final String SIGNED = """
            SELECT p.kind, p.subject, e.actor, p.why
            FROM holds.rule_pass p JOIN ledger.entry e ON e.number = p.entry
            WHERE p.rule = :rule AND p.subject = ANY (:subjects) AND p.signed_at <= :at
              AND (cast(:after AS timestamptz) IS NULL OR p.signed_at > :after)
              AND (p.operation IS NULL OR p.operation = :operation) AND %s AND p.rule IN %s
            ORDER BY p.entry, p.ordinal
            """.formatted(Known.now("p.entry"), IN_FORCE.formatted("p.signed_at"));

    private static final String EVER = "rules ever passed";

    private final SoleWriter sole;
    private final JdbcClient jdbc;

    Passes(SoleWriter sole, JdbcClient jdbc) {
        this.sole = sole;
        this.jdbc = jdbc;
    }

    /**
     * What a pass is wanted for.
     *
     * @param operation the operation that is done; absent if it is none
     * @param after only what was signed later counts, the rest is used up; absent if all counts
     * @param at when it is done
     */
    public record Wanted(
            SoftRule rule,
            @Nullable String operation,
            @Nullable OffsetDateTime after,
            OffsetDateTime at) {}

    /** Whether the list in force at a time lets a person pass a rule. */
    public boolean mayBePassed(SoftRule rule, OffsetDateTime at) {
        return jdbc.sql("SELECT 1 WHERE :rule IN " + IN_FORCE.formatted(":at"))
                .param("rule", rule.word())
                .param("at", at)
                .query(Integer.class)
                .optional()
                .isPresent();
    }

    /** Keeps that a person signs for a rule to be passed. */
    public void sign(
            Fact<?> fact, SoftRule rule, Collection<TraceRef> subjects, @Nullable String operation, String why) {
        int ordinal = 0;
        sole.known(EVER).clear();
        for (TraceRef subject : subjects) {
            jdbc.sql("""
                            INSERT INTO holds.rule_pass
                              (entry, ordinal, rule, kind, subject, operation, why, signed_at)
                            VALUES (?, ?, ?, ?, ?, ?, ?, ?)
                            """)
                    .params(fact.entry(), ++ordinal, rule.word(), subject.kind().name(), subject.id())
                    .param(operation)
                    .params(why, fact.occurredAt())
                    .update();
        }
    }

    /**
     * Says that a rule is broken, as {@link Fact#breaks} does; where a person signed for every subject, it only notes
     * who, and the happening goes on.
     *
     * @param operation the operation that is done; absent if it is none
     */
    public void breaks(
            Fact<?> fact, SoftRule rule, @Nullable String operation, Words words, Collection<TraceRef> subjects) {
        breaks(fact, new Wanted(rule, operation, null, fact.occurredAt()), words, subjects);
    }

    /** The same of a rule whose passes may be used up. */
    public void breaks(Fact<?> fact, Wanted wanted, Words words, Collection<TraceRef> subjects) {
        String rule = wanted.rule().word();
        Map<TraceRef, String> signed = signed(wanted, subjects);
        TraceRef[] about = subjects.toArray(TraceRef[]::new);
        if (signed.keySet().containsAll(subjects)) {
            String by = signed.getOrDefault(about[0], "");
            fact.shows(
                    rule,
                    words.sentence() + "; passed by " + by,
                    "Look at what was signed, and settle the finding",
                    about);
        } else {
            fact.breaks(rule, words.sentence(), words.remedy(), about);
        }
    }

    /** What is wrong, and what to do about it. */
    public record Words(String sentence, String remedy) {}

    /** Whether a person signed for all of these. */
    public boolean areSigned(Wanted wanted, Collection<TraceRef> subjects) {
        return signed(wanted, subjects).keySet().containsAll(subjects);
    }

    /** Whether anybody ever signed for a rule to be passed. */
    public boolean isEverSigned(SoftRule rule) {
        return sole.<SoftRule, Boolean>known(EVER)
                .computeIfAbsent(
                        rule,
                        asked -> jdbc.sql("SELECT EXISTS (SELECT FROM holds.rule_pass WHERE rule = ?)")
                                .param(asked.word())
                                .query(Boolean.class)
                                .single());
    }

    private Map<TraceRef, String> signed(Wanted wanted, Collection<TraceRef> subjects) {
        Map<TraceRef, String> signed = new HashMap<>();
        List<Long> ids = subjects.stream().map(TraceRef::id).toList();
        jdbc.sql(SIGNED)
                .param("rule", wanted.rule().word())
                .param("subjects", ids.toArray(Long[]::new))
                .param("at", wanted.at())
                .param("after", wanted.after(), Types.TIMESTAMP_WITH_TIMEZONE)
                .param("operation", wanted.operation(), Types.VARCHAR)
                .query(row -> {
                    signed.put(
                            new TraceRef(TraceKind.valueOf(row.getString(1)), row.getLong(2)),
                            row.getString(3) + ": " + row.getString(4));
                });
        return signed;
    }
}
