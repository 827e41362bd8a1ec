package dev.sunthread.materials.incoming;

import dev.sunthread.ledger.Known;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Attached documents, by their hash or by the lot they are about, as known at a cut-off. */
@Repository
public class Attachments {

    private final JdbcClient jdbc;

    Attachments(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Documents about a lot: attached to it, or named as certificates by an incoming release of it. */
    public List<Attached> of(long lot, long cutoff) {
        return jdbc.sql("""
                        SELECT a.sha256, a.name, a.media_type, octet_length(a.content) AS size, e.occurred_at AS at, e.id AS entry
                        FROM materials.attachment a JOIN ledger.entry e ON e.number = a.entry
                        WHERE %s AND (a.lot = :lot OR a.sha256 IN (
                          SELECT c.sha256 FROM materials.incoming_release r JOIN materials.incoming_certificate c USING (entry)
                          WHERE r.lot = :lot AND %s))
                        ORDER BY e.occurred_at, a.entry
                        """.formatted(Known.at("a.entry"), Known.at("r.entry")))
                .param("lot", lot)
                .param("cutoff", cutoff)
                .query(DataClassRowMapper.newInstance(Attached.class))
                .list();
    }

    /** The document with this hash, under the name it first came with. */
    public Optional<Document> document(String sha256, long cutoff) {
        return jdbc.sql(
                        "SELECT a.name, a.media_type, a.content FROM materials.attachment a WHERE a.sha256 = :sha256 AND "
                                + Known.at("a.entry") + " ORDER BY a.entry LIMIT 1")
                .param("sha256", sha256)
                .param("cutoff", cutoff)
                .query(DataClassRowMapper.newInstance(Document.class))
                .optional();
    }

    boolean isAttached(String sha256) {
        return jdbc.sql("SELECT 1 FROM materials.attachment a WHERE a.sha256 = ? AND " + Known.now("a.entry")
                        + " LIMIT 1")
                .param(sha256)
                .query(Integer.class)
                .optional()
                .isPresent();
    }
}
