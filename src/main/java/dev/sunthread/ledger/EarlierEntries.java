package dev.sunthread.ledger;

import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Says who recorded something earlier, where and when, for the sentence that tells another why it is too late. */
@Repository
public class EarlierEntries {

    private static final DateTimeFormatter WRITTEN =
            DateTimeFormatter.ofPattern("yyyy-MM-dd 'at' HH:mm:ss", Locale.ROOT);

    private final JdbcClient jdbc;

    EarlierEntries(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Who told an entry, where and when by its own time, such as {@code by op-07 at BOND-1 on 2026-03-02 at 10:15:04}. */
    public String words(long entry, OffsetDateTime seenFrom) {
        return words(entry, seenFrom.getOffset());
    }

    private String words(long entry, ZoneOffset offset) {
        return jdbc.sql("SELECT actor, source, occurred_at FROM ledger.entry WHERE number = ?")
                .param(entry)
                .query((row, number) -> "by %s at %s on %s"
                        .formatted(
                                row.getString(1),
                                row.getString(2),
                                WRITTEN.format(
                                        row.getObject(3, OffsetDateTime.class).withOffsetSameInstant(offset))))
                .single();
    }
}
