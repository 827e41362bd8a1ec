package dev.sunthread.catalog;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What checks of equipment found wrong with its readings, and what radiometers read at them. */
@Repository
public class FoundErrors {

    private final JdbcClient jdbc;

    FoundErrors(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void record(long entry, List<FoundError> errors) {
        int ordinal = 0;
        for (FoundError error : errors) {
            FoundError.Onset onset = error.onset() == null ? FoundError.Onset.UNKNOWN : error.onset();
            jdbc.sql("""
                            INSERT INTO catalog.check_error (entry, ordinal, sensor, quantity, offset_by, percent, onset)
                            VALUES (?, ?, ?, ?, ?, ?, ?)
                            """)
                    .params(entry, ++ordinal)
                    .param(error.sensor())
                    .param(error.quantity().name())
                    .param(error.offset())
                    .param(error.percent())
                    .param(onset.name())
                    .update();
        }
    }

    /** The errors that each bad one of these checks found, empty if it states none; good checks are left out. */
    public Map<Long, List<FoundError>> of(Collection<Long> checks) {
        Map<Long, List<FoundError>> found = new HashMap<>();
        jdbc.sql("""
                        SELECT c.entry, f.sensor, f.quantity, f.offset_by, f.percent, f.onset
                        FROM catalog.equipment_check c LEFT JOIN catalog.check_error f USING (entry)
                        WHERE c.entry = ANY (?) AND c.verdict = 'BAD' ORDER BY c.entry, f.ordinal
                        """).param(checks.toArray(Long[]::new)).query((ResultSet row) -> {
            List<FoundError> stated = found.computeIfAbsent(row.getLong(1), check -> new ArrayList<>());
            if (row.getString(3) != null) {
                stated.add(error(row));
            }
        });
        return found;
    }

    private static FoundError error(ResultSet row) throws SQLException {
        return new FoundError(
                row.getString(2),
                FoundError.Quantity.valueOf(row.getString(3)),
                row.getBigDecimal(4),
                row.getBigDecimal(5),
                FoundError.Onset.valueOf(row.getString(6)));
    }
}
