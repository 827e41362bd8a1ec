package dev.sunthread.catalog.judging;

import dev.sunthread.catalog.FoundError;
import dev.sunthread.catalog.FoundErrors;
import dev.sunthread.catalog.TermsHistory;
import dev.sunthread.kernel.verdict.Outcome;
import dev.sunthread.kernel.verdict.Phrase;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Keeps the verdicts of one module's runs up to date, and answers by them. */
public abstract class Verdicts<T> {

    private static final int AT_ONCE = 500;

    private final Runs runs;
    private final TermsHistory<T> history;
    private final Judge<T> judge;
    private final FoundErrors errors;
    private final VerdictTable table;
    private final Selection selection;
    private final UnderRevisions<T> revisions;

    protected Verdicts(Runs runs, TermsHistory<T> history, Judge<T> judge, FoundErrors errors, JdbcClient jdbc) {
        this.runs = runs;
        this.history = history;
        this.judge = judge;
        this.errors = errors;
        this.table = new VerdictTable(runs, jdbc);
        this.selection = new Selection(runs, history, jdbc);
        this.revisions = new UnderRevisions<>(runs, history, this::judge, jdbc);
    }

    /** Judges the run of an entry under the revision in force when it began; nothing if that says nothing to judge by. */
    public Map<Long, Judged> judgeEntry(long entry) {
        return keep(table.missingStanding("r.entry = :param", entry));
    }

    /** Judges what was done with equipment wherever the verdict that stands is not kept yet, by entry. */
    public Map<Long, Judged> judgeEquipment(long equipment) {
        return keep(table.missingStanding("r.equipment = :param", equipment));
    }

    /** Judges what was done before a revision was released late, as if it had been in force, by entry. */
    public Map<Long, Judged> judgeReleased(long revision) {
        return keep(table.missingStanding("""
                r.%1$s = (SELECT q.%1$s FROM catalog.%1$s_revision q WHERE q.entry = :param)
                AND r.started_at >= (SELECT q.effective_at FROM catalog.%1$s_revision q WHERE q.entry = :param)
                """.formatted(runs.thing()), revision));
    }

    private Map<Long, Judged> keep(List<Standing> missing) {
        Map<Long, Judged> kept = new LinkedHashMap<>();
        missing.stream()
                .collect(Collectors.groupingBy(
                        Standing::revision, LinkedHashMap::new, Collectors.mapping(Standing::run, Collectors.toList())))
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

    /** How these runs stand now, in the order they began; those that no revision in force can judge are left out. */
    protected List<Standing> standing(Collection<Long> entries) {
        return table.standing(entries);
    }

    /** The errors that the checks next to these runs found; a bad check that states none has an empty list. */
    protected Map<Long, List<FoundError>> found(Collection<Judge.Case> cases) {
        return errors.of(cases.stream()
                .map(Judge.Case::checked)
                .filter(checked -> checked != 0)
                .distinct()
                .toList());
    }

    /** Judges runs by terms, each by the errors that its next check found. */
    public Map<Judge.Case, Judged> judge(Collection<Judge.Case> cases, T terms) {
        Map<Long, List<FoundError>> found = found(cases);
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

    /** Whose runs they are. */
    Runs kind() {
        return runs;
    }

    List<Selected> selected(Question question, long cutoff) {
        return selection.of(question, cutoff);
    }

    /** What comes out for each entry: by stated errors if there are any, else by those that checks found. */
    Map<Long, Judged> judgeSelected(Collection<Selected> selected, List<FoundError> stated) {
        Map<Long, Judged> judged = new HashMap<>();
        selected.stream()
                .collect(Collectors.groupingBy(
                        Selected::revision, Collectors.mapping(Selected::known, Collectors.toList())))
                .forEach((revision, cases) -> judged.putAll(
                        stated.isEmpty()
                                ? kept(revision, cases)
                                : judge.judge(cases, history.terms(revision), run -> stated)));
        return judged;
    }

    private Map<Long, Judged> kept(long revision, List<Judge.Case> cases) {
        Map<Judge.Case, Judged> judged = judge(cases, history.terms(revision));
        table.keep(revision, judged);
        Map<Long, Judged> byEntry = new HashMap<>();
        judged.forEach((run, verdict) -> byEntry.put(run.entry(), verdict));
        return byEntry;
    }

    /** The verdict that stands for each of these runs now, by raw data or as it was told. */
    Map<Long, Stood> stood(Collection<Selected> selected) {
        return table.stood(selected.stream().map(run -> run.known().entry()).toList());
    }

    /** A verdict that stands, in words. */
    record Stood(String outcome, Phrase why) {
        static final Stood NOT_AT_ALL = new Stood("not judged", Phrase.of("judged.no-limits"));
    }

    /**
     * The entries of the runs that a question selects with one of the outcomes, as known at a cut-off, with the number
     * behind each run. What was judged before is not judged again.
     */
    public Map<Long, Long> found(Question question, Collection<Outcome> outcomes, long cutoff) {
        List<Selected> selected = selection.of(question, cutoff);
        Map<Long, Outcome> known = outcomes(question, selected);
        Map<Long, Long> found = new LinkedHashMap<>();
        selected.stream()
                .filter(run -> outcomes.contains(known.get(run.known().entry())))
                .forEach(run -> found.put(run.known().entry(), run.run()));
        return found;
    }

    /** How many entries of runs {@link #found} with each outcome. */
    public Map<Outcome, Integer> counted(Question question, long cutoff) {
        return outcomes(question, selection.of(question, cutoff)).values().stream()
                .collect(Collectors.groupingBy(Function.identity(), Collectors.summingInt(run -> 1)));
    }

    private Map<Long, Outcome> outcomes(Question question, List<Selected> selected) {
        Map<Long, Outcome> known = new HashMap<>();
        if (question.errors().isEmpty()) {
            known.putAll(table.known(selected));
        }
        List<Selected> unknown = selected.stream()
                .filter(run -> !known.containsKey(run.known().entry()))
                .toList();
        for (int from = 0; from < unknown.size(); from += AT_ONCE) {
            judgeSelected(unknown.subList(from, Math.min(unknown.size(), from + AT_ONCE)), question.errors())
                    .forEach((entry, judged) ->
                            known.put(entry, judged.judgement().outcome()));
        }
        return known;
    }

    /** What comes out for the run of an entry under every revision known at a cut-off, the last to be in force first. */
    public List<Under> under(long entry, long cutoff) {
        return revisions.of(entry, cutoff);
    }
}
