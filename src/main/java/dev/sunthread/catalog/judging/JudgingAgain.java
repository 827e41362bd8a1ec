package dev.sunthread.catalog.judging;

import dev.sunthread.database.Bulkhead;
import java.time.Clock;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.core.task.TaskExecutor;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.support.TransactionTemplate;
import tools.jackson.databind.json.JsonMapper;

/** Judges runs again as jobs with progress; what comes out is kept for a week, both verdicts side by side. */
public abstract class JudgingAgain<T> {

    private static final int AT_ONCE = 500;
    private static final Duration KEPT = Duration.ofDays(7);

    private final Verdicts<T> verdicts;
    private final JudgedAgainTable table;
    private final TaskExecutor executor;
    private final TransactionTemplate transaction;
    private final Clock clock;

    protected JudgingAgain(
            Verdicts<T> verdicts,
            JdbcClient jdbc,
            TaskExecutor executor,
            TransactionTemplate transaction,
            Clock clock) {
        this.verdicts = verdicts;
        this.table = new JudgedAgainTable(verdicts.kind(), jdbc);
        this.executor = executor;
        this.transaction = transaction;
        this.clock = clock;
    }

    /**
     * Begins to judge again, in the background.
     *
     * @return the job's number
     * @throws dev.sunthread.kernel.Refused if the question names what is not released
     */
    public long begin(Question question, long cutoff) {
        List<Selected> selected = verdicts.selected(question, cutoff);
        OffsetDateTime now = OffsetDateTime.now(clock);
        table.forgetBefore(now.minus(KEPT));
        long job = table.begin(JsonMapper.shared().writeValueAsString(question), now, cutoff, selected.size());
        // pages keep their connections meanwhile
        executor.execute(() -> Bulkhead.IMPORTS.run(() -> run(job, question, selected)));
        return job;
    }

    private void run(long job, Question question, List<Selected> selected) {
        try {
            for (int from = 0; from < selected.size(); from += AT_ONCE) {
                List<Selected> some = selected.subList(from, Math.min(selected.size(), from + AT_ONCE));
                transaction.executeWithoutResult(status -> table.keep(job, rows(question, some)));
            }
            table.end(job, "DONE", null);
        } catch (RuntimeException e) {
            table.end(job, "FAILED", "It stopped: " + e.getMessage() + ". Ask again");
            throw e;
        }
    }

    private List<JudgedAgainTable.Row> rows(Question question, List<Selected> some) {
        Map<Long, Judged> after = verdicts.judgeSelected(some, question.errors());
        Map<Long, Verdicts.Stood> before = verdicts.stood(some);
        List<JudgedAgainTable.Row> rows = new ArrayList<>();
        some.forEach(selected -> {
            long entry = selected.known().entry();
            Judged judged = after.get(entry);
            Verdicts.Stood stood = before.getOrDefault(entry, Verdicts.Stood.NOT_AT_ALL);
            if (judged != null) {
                rows.add(new JudgedAgainTable.Row(selected, stood.outcome(), stood.why(), judged));
            }
        });
        return rows;
    }

    public Optional<JudgedAgain> find(long job) {
        return table.find(job);
    }

    /** The newest first, a hundred at most. */
    public List<JudgedAgain> all() {
        return table.all();
    }

    public List<JudgedAgain.Change> changes(long job) {
        return table.changes(job);
    }

    public long count(long job, @Nullable String before, @Nullable String after) {
        return table.count(job, before, after);
    }

    /** A part of the lines, those with the verdicts that are given. */
    public List<JudgedAgain.Line> lines(
            long job, @Nullable String before, @Nullable String after, long offset, int most) {
        return table.lines(job, before, after, offset, most);
    }
}
