package dev.sunthread.ledger;

import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What is decided once about a thing, such as the settlement of a finding: one writer at a time, and who was first. */
@Repository
public class Decisions {

    private final EarlierEntries earlier;
    private final SoleWriter sole;
    private final JdbcClient jdbc;

    Decisions(EarlierEntries earlier, SoleWriter sole, JdbcClient jdbc) {
        this.earlier = earlier;
        this.sole = sole;
        this.jdbc = jdbc;
    }

    /**
     * Who decided before, where and when, if a decision stands that was recorded before.
     *
     * @param table where decisions of this kind are kept, with the entry that each was told by
     * @param thing the condition on {@code d} that names the thing, with places for the ids
     */
    public Optional<String> before(Fact<?> fact, String table, String thing, Object... ids) {
        String key = table + java.util.Arrays.toString(ids);
        if (!sole.isSole()) {
            jdbc.sql("SELECT pg_advisory_xact_lock(hashtextextended(?, 0))")
                    .param(key)
                    .query()
                    .listOfRows();
        }
        return jdbc.sql("SELECT d.entry FROM " + table + " d WHERE " + thing + " AND " + Known.now("d.entry")
                        + " AND d.entry <> ? ORDER BY d.entry LIMIT 1")
                .params(ids)
                .param(fact.entry())
                .query(Long.class)
                .optional()
                .map(entry -> earlier.words(entry, fact.occurredAt()));
    }
}
