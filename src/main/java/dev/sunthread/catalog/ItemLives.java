package dev.sunthread.catalog;

import dev.sunthread.ledger.Remembered;
import java.time.Duration;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** How long containers of items may be open or at room temperature, as released and in force at a time. */
@Repository
public class ItemLives {

    private static final String LIVES = "item lives";

    /**
     * What a released revision of an item allows its containers.
     *
     * @param open how long an opened one may be used; without limit if absent
     * @param out how long one may be at room temperature in all; without limit if absent
     */
    public record Life(@Nullable Duration open, @Nullable Duration out) {

        static final Life WITHOUT_LIMIT = new Life(null, null);
    }

    private record Released(OffsetDateTime at, Life life) {}

    private final Remembered remembered;
    private final JdbcClient jdbc;

    ItemLives(Remembered remembered, JdbcClient jdbc) {
        this.remembered = remembered;
        this.jdbc = jdbc;
    }

    /** What the revision of an item in force at a time allows. */
    public Life of(long item, OffsetDateTime at) {
        return remembered.<Long, List<Released>>of(LIVES).computeIfAbsent(item, this::released).stream()
                .filter(revision -> !revision.at().isAfter(at))
                .findFirst()
                .map(Released::life)
                .orElse(Life.WITHOUT_LIMIT);
    }

    /** All revisions, the last to be in force first. */
    private List<Released> released(long item) {
        return jdbc.sql("""
                        SELECT e.occurred_at, r.open_life, r.out_life
                        FROM catalog.item_revision r JOIN ledger.entry e ON e.number = r.entry
                        WHERE r.item = ? ORDER BY e.occurred_at DESC, r.entry DESC
                        """)
                .param(item)
                .query((row, number) -> new Released(
                        row.getObject(1, OffsetDateTime.class),
                        new Life(seconds(row.getObject(2, Integer.class)), seconds(row.getObject(3, Integer.class)))))
                .list();
    }

    private static @Nullable Duration seconds(@Nullable Integer seconds) {
        return seconds == null ? null : Duration.ofSeconds(seconds);
    }

    /** Says that a revision of an item is released by what is being recorded. */
    void changed() {
        remembered.of(LIVES).clear();
    }
}
