package dev.sunthread.catalog.judging;

import dev.sunthread.catalog.FoundError;
import dev.sunthread.catalog.FoundErrors;
import dev.sunthread.catalog.ReleasedTerms;
import dev.sunthread.catalog.TermsHistory;
import dev.sunthread.kernel.verdict.Outcome;
import dev.sunthread.ledger.Known;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Keeps the verdicts of one module's runs up to date, and answers by them. */
public abstract class Verdicts<T> {

    private static final int AT_ONCE = 500;

    private final Runs runs;
    private final TermsHistory<T> history;
    private final Judge<T> judge;
    private final FoundErrors errors;
    private final JdbcClient jdbc;
    private final VerdictTable table;

    protected Verdicts(Runs runs, TermsHistory<T> history, Judge<T> judge, FoundErrors errors, JdbcClient jdbc) {
        this.runs = runs;
        this.history = history;
        this.judge = judge;
        this.errors = errors;
        this.jdbc = jdbc;
        this.table = new VerdictTable(runs, jdbc);
    }

    /** Judges the run of an entry under the revision in force when it began; nothing if that says nothing to judge by. */
    public Map<Long, Judged> judgeEntry(long entry) {
        return keep(table.missingStanding("r.entry", entry));
    }

    /** Judges what was done with equipment wherever the verdict that stands is not known yet. */
    public Map<Long, Judged> judgeEquipment(long equipment) {
        return keep(table.missingStanding("r.equipment", equipment));
    }

    private Map<Long, Judged> keep(List<VerdictTable.Missing> missing) {
        Map<Long, Judged> kept = new LinkedHashMap<>();
        missing.stream()
                .collect(Collectors.groupingBy(
                        VerdictTable.Missing::revision,
                        LinkedHashMap::new,
                        Collectors.mapping(VerdictTable.Missing::run, Collectors.toList())))
                .forEach((revision, cases) -> kept.putAll(keep(revision, history.terms(revision), cases)));
        return kept;
    }

    private Map<Long, Judged> keep(long revision, T terms, List<Judge.Case> cases) {
        Map<Long, Judged> kept = new HashMap<>();
        for (int from = 0; from < cases.size(); from += AT_ONCE) {
            List<Judge.Case> some = cases.subList(from, Math.min(cases.size(), from + AT_ONCE));
            Map<Judge.Case, Judged> judged = judge(some, terms);
            table.keep(revision, judged);
            judged.forEach((run, verdict) -> kept.put(run.entry(), verdict));
        }
        return kept;
    }

    /** Judges runs by terms, each by the errors that its next check found. */
    public Map<Judge.Case, Judged> judge(Collection<Judge.Case> cases, T terms) {
        Map<Long, List<FoundError>> found = errors.of(cases.stream()
                .map(Judge.Case::checked)
                .filter(checked -> checked != 0)
                .distinct()
                .toList());
        Map<Long, Judged> judged = judge.judge(cases, terms, run -> found.getOrDefault(run.checked(), List.of()));
        Map<Judge.Case, Judged> verdicts = new LinkedHashMap<>();
        cases.forEach(run -> {
            Judged verdict = judged.get(run.entry());
            if (verdict != null) {
                List<FoundError> stated = found.get(run.checked());
                boolean unknown = stated != null && stated.isEmpty();
                verdicts.put(run, unknown ? verdict.withUnknownError() : verdict);
            }
        });
        return verdicts;
    }

    /** The runs, by internal numbers, with one of the outcomes under a revision, as known at a cut-off. */
    public List<Long> runs(long thing, ReleasedTerms<T> revision, Collection<Outcome> outcomes, long cutoff) {
        keep(revision.entry(), revision.terms(), table.missingUnder(thing, revision.entry(), cutoff));
        return jdbc.sql("""
                        SELECT DISTINCT r.run FROM %1$s JOIN %2$s.verdict v
                          ON v.entry = r.entry AND v.revision = :revision AND v.checked = k.checked
                        WHERE r.%3$s = :thing AND %4$s AND v.outcome = ANY (:outcomes) ORDER BY r.run
                        """.formatted(
                        runs.withNextCheck(Known.at("c.entry")), runs.schema(), runs.thing(), Known.at("r.entry")))
                .param("revision", revision.entry())
                .param("thing", thing)
                .param("cutoff", cutoff)
                .param("outcomes", outcomes.stream().map(Outcome::name).toArray(String[]::new))
                .query(Long.class)
                .list();
    }

    /** The run of an entry with the next check that says something of it, as known at a cut-off. */
    public Judge.Case atCutoff(long entry, long cutoff) {
        return jdbc.sql("SELECT k.checked FROM " + runs.withNextCheck(Known.at("c.entry")) + " WHERE r.entry = :entry")
                .param("entry", entry)
                .param("cutoff", cutoff)
                .query((row, number) -> new Judge.Case(entry, row.getLong(1)))
                .single();
    }
}
