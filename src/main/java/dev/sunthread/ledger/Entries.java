package dev.sunthread.ledger;

import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.RowCallbackHandler;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The ledger's entries: opened, filled and closed within one transaction, and never changed afterwards. */
@Repository
public class Entries {

    private static final String OPEN = """
            INSERT INTO ledger.entry
              (id, kind, kind_version, occurred_at, recorded_at, recorded_by, actor, source, envelope, hash)
            VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (id) DO NOTHING
            RETURNING number, set_config('sunthread.entry', number::text, true), pg_advisory_xact_lock_shared(%d)
            """.formatted(SoleWriter.LOCK);

    static final String CLOSE = "INSERT INTO %s RETURNING set_config('sunthread.entry', '', true)";

    private final Remembered remembered;
    private final JdbcClient jdbc;

    Entries(Remembered remembered, JdbcClient jdbc) {
        this.remembered = remembered;
        this.jdbc = jdbc;
    }

    /** Opens an entry; empty if its id is known. History can be written for it until it is closed. */
    Optional<Long> open(Envelope envelope, Recorded recorded) {
        EnvelopeHead head = envelope.head();
        return jdbc.sql(OPEN)
                .params(head.id(), head.kind(), head.version(), head.occurredAt(), recorded.at())
                .param(recorded.by())
                .params(head.actor(), head.source(), envelope.canonical(), envelope.hash())
                .query((row, number) -> row.getLong(1))
                .optional();
    }

    /** Closes an entry, which then waits for the sealer. */
    void close(long entry) {
        jdbc.sql(CLOSE.formatted("ledger.unsealed (entry) SELECT ?"))
                .param(entry)
                .query(String.class)
                .single();
    }

    /** Marks what is written so far, within a transaction. */
    void mark() {
        jdbc.sql("SAVEPOINT envelope").update();
    }

    void unmark() {
        jdbc.sql("RELEASE SAVEPOINT envelope").update();
    }

    void takeBackToMark() {
        jdbc.sql("ROLLBACK TO SAVEPOINT envelope").update();
        remembered.forget();
    }

    /** Whether an entry with its id says just the same. */
    public boolean holds(Envelope envelope) {
        return jdbc.sql("SELECT hash FROM ledger.entry WHERE id = ?")
                .param(envelope.id())
                .query(byte[].class)
                .optional()
                .filter(hash -> java.util.Arrays.equals(hash, envelope.hash()))
                .isPresent();
    }

    /** Which of these ids are recorded, whatever their content. */
    public Set<String> known(Collection<String> ids) {
        return jdbc
                .sql("SELECT id FROM ledger.entry WHERE id = ANY (?)")
                .param(ids.toArray(String[]::new))
                .query(String.class)
                .list()
                .stream()
                .collect(Collectors.toSet());
    }

    /** The hashes of what is recorded under any of these ids. */
    public Map<String, byte[]> hashes(Collection<String> ids) {
        Map<String, byte[]> hashes = new HashMap<>();
        jdbc.sql("SELECT id, hash FROM ledger.entry WHERE id = ANY (?)")
                .param(ids.toArray(String[]::new))
                .query((RowCallbackHandler) row -> hashes.put(row.getString(1), row.getBytes(2)));
        return hashes;
    }

    /** The entry with this id, as far as voids, corrections and settlements need it. */
    public Optional<NamedEntry> named(String id) {
        return jdbc.sql("""
                        SELECT e.number, e.id, coalesce(c.kind, e.kind) AS kind, e.occurred_at,
                               coalesce(c.kind_version, e.kind_version) AS kind_version
                        FROM ledger.entry e LEFT JOIN ledger.correction c ON c.entry = e.number WHERE e.id = ?
                        """).param(id).query(NamedEntry.class).optional();
    }

    /** What the entry with this id says, as it was said. */
    public Optional<SaidEntry> said(String id) {
        return jdbc.sql("SELECT occurred_at, envelope FROM ledger.entry WHERE id = ?")
                .param(id)
                .query(SaidEntry.class)
                .optional();
    }

    /** Whether nothing at all was recorded yet. */
    public boolean none() {
        return jdbc.sql("SELECT 1 FROM ledger.entry LIMIT 1")
                .query(Integer.class)
                .optional()
                .isEmpty();
    }

    /** The next entries behind a position, at most so many, in the order of their positions. */
    public List<SealedEntry> after(long position, long upTo, int most) {
        return jdbc.sql("""
                        SELECT p.position, e.recorded_at, e.recorded_by, e.envelope, e.hash
                        FROM ledger.position p JOIN ledger.entry e ON e.number = p.entry
                        WHERE p.position > ? AND p.position <= ? ORDER BY p.position LIMIT ?
                        """)
                .params(position, upTo, most)
                .query(DataClassRowMapper.newInstance(SealedEntry.class))
                .list();
    }

    /** When the entry at a position was recorded; empty at nought, where nothing is. */
    public Optional<OffsetDateTime> recordedAt(long position) {
        return jdbc.sql("""
                        SELECT e.recorded_at FROM ledger.position p JOIN ledger.entry e ON e.number = p.entry
                        WHERE p.position = ?
                        """).param(position).query(OffsetDateTime.class).optional();
    }
}
