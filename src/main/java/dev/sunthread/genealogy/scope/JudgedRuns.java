package dev.sunthread.genealogy.scope;

import dev.sunthread.catalog.judging.Question;
import dev.sunthread.cure.judging.CureVerdicts;
import dev.sunthread.electrical.judging.TestVerdicts;
import dev.sunthread.genealogy.Scope;
import dev.sunthread.kernel.Refused;
import dev.sunthread.kernel.verdict.Outcome;
import dev.sunthread.ledger.Known;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Runs, and units by their last test, with an outcome of their raw data under a revision, as known at a cut-off. */
@Component
class JudgedRuns {

    private final CureVerdicts cures;
    private final TestVerdicts tests;
    private final JdbcClient jdbc;

    JudgedRuns(CureVerdicts cures, TestVerdicts tests, JdbcClient jdbc) {
        this.cures = cures;
        this.tests = tests;
        this.jdbc = jdbc;
    }

    /** The numbers behind the cure runs with one of the outcomes. */
    Collection<Long> cureRuns(Scope.CureVerdict scope, long cutoff) {
        Scope.Judged by = scope.by();
        return cures.found(question(scope.recipe(), by), outcomes(by), cutoff).values();
    }

    /**
     * The units whose last valid test under the specification, of those that the scope selects, has one of the outcomes; of
     * tests in one spell of times that are not proven, any may have been the last.
     */
    List<Long> units(Scope.TestVerdict scope, long cutoff) {
        Scope.Judged by = scope.by();
        Question question = question(scope.specification(), by);
        Map<Long, Long> all = tests.found(question, List.of(Outcome.values()), cutoff);
        Map<Long, Long> found = tests.found(question, outcomes(by), cutoff);
        return jdbc.sql("""
                        WITH tested AS MATERIALIZED (
                          SELECT r.unit, r.entry, r.ended_at FROM electrical.run_record r
                          WHERE r.entry = ANY (:all) AND r.verdict <> 'INVALID')
                        SELECT DISTINCT r.unit FROM tested r
                        WHERE r.entry = ANY (:found) AND NOT EXISTS (
                          SELECT FROM tested o
                          WHERE o.unit = r.unit AND (o.ended_at, o.entry) > (r.ended_at, r.entry) AND NOT EXISTS (
                            SELECT FROM quality.unproven_time x
                            WHERE r.ended_at BETWEEN x.since AND x.until AND o.ended_at BETWEEN x.since AND x.until
                              AND %s))
                        ORDER BY r.unit
                        """.formatted(Known.at("x.entry")))
                .param("cutoff", cutoff)
                .param("all", all.keySet().toArray(Long[]::new))
                .param("found", found.keySet().toArray(Long[]::new))
                .query(Long.class)
                .list();
    }

    TestVerdicts tests() {
        return tests;
    }

    private static Question question(String code, Scope.Judged by) {
        return new Question(
                code,
                by.revision(),
                by.equipment(),
                by.window().from(),
                by.window().to(),
                by.errors().stream().map(Scope.Wrong::found).toList());
    }

    private static List<Outcome> outcomes(Scope.Judged by) {
        try {
            return by.outcomes().stream()
                    .map(word -> Outcome.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_')))
                    .toList();
        } catch (IllegalArgumentException e) {
            throw new Refused(by.outcomes() + " are no outcomes", "Say failed, not-proven or passed");
        }
    }
}
