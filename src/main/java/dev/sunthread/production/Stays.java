package dev.sunthread.production;

import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Service;

/** What sits where: state that follows the history of installations and removals. */
@Service
public class Stays {

    /** Stays of a unit and of whatever shares a position with it; no others can change when the unit's change. */
    private static final String OF_UNIT = """
            SELECT i.entry FROM production.installation i WHERE i.child_unit = :id
            UNION SELECT i.entry FROM production.installation i JOIN production.installation o USING (parent_position)
            WHERE o.child_unit = :id
            """;

    private static final String INSERT_FROM_HISTORY = """
            INSERT INTO production.stay (entry, child_unit, child_lot, parent_position, during, applied)
            SELECT entry, child_unit, child_lot, parent_position, during, applied FROM production.staying
            """;

    /**
     * A table {@code position} of the {@code id} of the {@code :position} of a {@code :parent}, known from now on; empty if
     * another writer, that did not lock the parent, made it since the statement began.
     */
    static final String WITH_POSITION = """
            WITH known AS (SELECT id FROM production.parent_position WHERE parent = :parent AND position = :position),
            made AS (INSERT INTO production.parent_position (parent, position)
              SELECT :parent, :position WHERE NOT EXISTS (SELECT FROM known) ON CONFLICT DO NOTHING RETURNING id),
            position AS (SELECT id FROM known UNION ALL SELECT id FROM made)
            """;

    private static final String AT_POSITION =
            "SELECT i.entry FROM production.installation i WHERE i.parent_position = :id";

    private final JdbcClient jdbc;

    Stays(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The position of a parent, known from now on. */
    long position(long parent, String position) {
        return jdbc.sql(WITH_POSITION + "SELECT id FROM position")
                .param("parent", parent)
                .param("position", position)
                .query(Long.class)
                .optional()
                .orElseGet(() -> findPosition(parent, position).orElseThrow());
    }

    private Optional<Long> findPosition(long parent, String position) {
        return jdbc.sql("SELECT id FROM production.parent_position WHERE parent = ? AND position = ?")
                .params(parent, position)
                .query(Long.class)
                .optional();
    }

    /**
     * Adds the stay of an installation that was just recorded, which changes no other's: those recorded before go first.
     * Gives whether it is applied, or kept apart because it contradicts one of them.
     */
    boolean begin(long entry) {
        return jdbc.sql(INSERT_FROM_HISTORY + " WHERE entry = ? RETURNING applied")
                .param(entry)
                .query(Boolean.class)
                .single();
    }

    /** Brings the state of a unit, and of what shares its positions, in line with history. */
    void followUnit(long unit) {
        follow(OF_UNIT, unit);
    }

    /** Brings the state of a position in line with history; enough for a part that is known by its lot only. */
    void followPosition(long position) {
        follow(AT_POSITION, position);
    }

    private void follow(String entries, long id) {
        // an array is read first, whatever the planner thinks of the sizes
        String touched = " = ANY (ARRAY(" + entries + "))";
        jdbc.sql("DELETE FROM production.stay s WHERE s.entry" + touched)
                .param("id", id)
                .update();
        jdbc.sql(INSERT_FROM_HISTORY + " WHERE entry" + touched).param("id", id).update();
    }

    /** Whether the child is in the parent at a time, as state has it. */
    boolean isInside(@Nullable Long unit, @Nullable Long lot, long parent, OffsetDateTime at) {
        return jdbc.sql("""
                        SELECT 1 FROM production.stay s JOIN production.parent_position p ON p.id = s.parent_position
                        WHERE (s.child_unit = :unit OR s.child_lot = :lot) AND p.parent = :parent AND s.during @> :at LIMIT 1
                        """)
                .param("unit", unit, java.sql.Types.BIGINT)
                .param("lot", lot, java.sql.Types.BIGINT)
                .param("parent", parent)
                .param("at", at)
                .query(Integer.class)
                .optional()
                .isPresent();
    }

    /** Which of these units are inside another at a time, as state has it. */
    Set<Long> insideAny(Collection<Long> units, OffsetDateTime at) {
        return jdbc
                .sql("SELECT child_unit FROM production.stay WHERE child_unit = ANY (?) AND applied AND during @> ?")
                .params(units.toArray(Long[]::new), at)
                .query(Long.class)
                .list()
                .stream()
                .collect(Collectors.toSet());
    }

    /** What differs between the state of stays and their history; empty if nothing does. */
    public List<String> differencesFromHistory() {
        return jdbc.sql("""
                        SELECT format('installation of entry %s: state %s %s, history %s %s',
                          entry, s.during, s.applied, h.during, h.applied)
                        FROM production.stay s FULL JOIN production.staying h USING (entry)
                        WHERE (s.during, s.applied, s.parent_position) IS DISTINCT FROM (h.during, h.applied, h.parent_position)
                        ORDER BY 1
                        """).query((row, number) -> row.getString(1)).list();
    }

    /** Writes the state anew from history. */
    public void rebuild() {
        jdbc.sql("DELETE FROM production.stay").update();
        jdbc.sql(INSERT_FROM_HISTORY).update();
    }
}
