package dev.sunthread.genealogy.answer;

import dev.sunthread.holds.Holds;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The reasons that hold something at a cut-off. */
final class HoldReasons {

    private static final String ON = "SELECT subject, array_agg(reason ORDER BY since, entry, ordinal) FROM ("
            + Holds.KNOWN + ") open WHERE kind = :kind AND subject = ANY (:ids) GROUP BY subject";

    private final JdbcClient jdbc;
    private final long cutoff;
    private final Map<TraceRef, List<String>> reasons = new HashMap<>();

    HoldReasons(JdbcClient jdbc, long cutoff) {
        this.jdbc = jdbc;
        this.cutoff = cutoff;
    }

    /** Makes sure that the reasons on all these are known. */
    void learn(Collection<TraceRef> subjects) {
        learn(subjects, TraceKind.LOT);
        learn(subjects, TraceKind.UNIT);
    }

    private void learn(Collection<TraceRef> subjects, TraceKind kind) {
        jdbc.sql(ON)
                .param("cutoff", cutoff)
                .param("kind", kind.name())
                .param(
                        "ids",
                        subjects.stream()
                                .filter(subject -> subject.kind() == kind)
                                .map(TraceRef::id)
                                .toArray(Long[]::new))
                .query(row -> {
                    List<String> told = List.of((String[]) row.getArray(2).getArray());
                    reasons.put(new TraceRef(kind, row.getLong(1)), told);
                });
    }

    List<String> on(TraceRef subject) {
        return reasons.getOrDefault(subject, List.of());
    }
}
