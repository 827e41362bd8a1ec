package dev.sunthread.genealogy.answer;

import dev.sunthread.genealogy.AnswerHead;
import dev.sunthread.genealogy.TraceQuestion;
import dev.sunthread.ledger.Entries;
import dev.sunthread.quality.StationsBehind;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** What answers say of themselves: cut-off, hash, counts, and what touches them that a person has yet to settle. */
@Component
public class AnswerHeads {

    private final JdbcClient jdbc;
    private final AnswerStore store;
    private final Entries entries;
    private final StationsBehind behind;
    private final Clock clock;

    public AnswerHeads(JdbcClient jdbc, AnswerStore store, Entries entries, StationsBehind behind, Clock clock) {
        this.jdbc = jdbc;
        this.store = store;
        this.entries = entries;
        this.behind = behind;
        this.clock = clock;
    }

    /** A kept answer that is asked for now. */
    public Optional<AnswerHead> use(String id) {
        store.use(id, OffsetDateTime.now(clock));
        return find(id);
    }

    public Optional<AnswerHead> find(String id) {
        return jdbc.sql("""
                        SELECT asked, suspects, cutoff_recorded_at, hash, open_findings, open_lines, cutoff, notes
                        FROM genealogy.answer WHERE id = ?
                        """)
                .param(id)
                .query((row, number) -> new AnswerHead(
                        id,
                        AskedQuestion.read(row.getString(1)),
                        List.of((String[]) row.getArray(2).getArray()),
                        row.getObject(3, OffsetDateTime.class),
                        row.getString(4),
                        store.counts(id),
                        row.getLong(5),
                        row.getLong(6),
                        behind.at(row.getLong(7)),
                        List.of((String[]) row.getArray(8).getArray())))
                .optional();
    }

    public AnswerHead of(String id, TraceQuestion question, Answering.Answered answered) {
        long cutoff = Objects.requireNonNull(question.cutoff());
        return new AnswerHead(
                id,
                question,
                answered.suspects(),
                entries.recordedAt(cutoff).orElse(null),
                AnswerHash.of(AskedQuestion.write(question), answered.lines()),
                List.of(),
                answered.touching().findings().size(),
                answered.touching().lines().size(),
                behind.at(cutoff),
                answered.notes());
    }
}
