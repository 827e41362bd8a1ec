package dev.sunthread.genealogy;

import dev.sunthread.holds.Holds;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The reasons that hold something at a cut-off. */
final class HoldReasons {

    private final Map<TraceRef, List<String>> reasons = new HashMap<>();

    HoldReasons(JdbcClient jdbc, long cutoff) {
        jdbc.sql("SELECT kind, subject, array_agg(reason ORDER BY since, entry, ordinal) FROM (" + Holds.KNOWN
                        + ") open GROUP BY kind, subject")
                .param("cutoff", cutoff)
                .query(row -> {
                    reasons.put(new TraceRef(TraceKind.valueOf(row.getString(1)), row.getLong(2)), List.of((String[])
                            row.getArray(3).getArray()));
                });
    }

    List<String> on(TraceRef subject) {
        return reasons.getOrDefault(subject, List.of());
    }
}
