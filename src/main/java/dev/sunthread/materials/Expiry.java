package dev.sunthread.materials;

import dev.sunthread.ledger.Known;
import dev.sunthread.ledger.SoleWriter;
import java.time.OffsetDateTime;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** When lots expire: as stated, or, of a lot made here without a statement, as the first of what it is made of. */
@Repository
public class Expiry {

    private static final String EARLIEST = """
            WITH RECURSIVE source (lot) AS (
              SELECT cast(:lot AS bigint)
              UNION
              SELECT c.component
              FROM source s JOIN materials.lot_component c ON c.lot = s.lot
              JOIN materials.lot_making m ON m.entry = c.entry AND m.lot = c.lot
              WHERE m.expires_at IS NULL AND %s)
            SELECT min(o.expires_at) FROM source s JOIN materials.lot_origin o ON o.lot = s.lot WHERE %s
            HAVING min(o.expires_at) IS NOT NULL
            """;

    private final SoleWriter sole;
    private final JdbcClient jdbc;

    Expiry(SoleWriter sole, JdbcClient jdbc) {
        this.sole = sole;
        this.jdbc = jdbc;
    }

    /** By all that is recorded and not withdrawn. */
    Optional<OffsetDateTime> now(long lot) {
        return sole.<Long, Optional<OffsetDateTime>>known(Lots.EXPIRIES).computeIfAbsent(lot, this::ask);
    }

    private Optional<OffsetDateTime> ask(long lot) {
        return read(EARLIEST.formatted(Known.now("c.entry"), Known.now("o.entry")), lot, 0);
    }

    /** As known at a cut-off. */
    public Optional<OffsetDateTime> at(long lot, long cutoff) {
        return read(EARLIEST.formatted(Known.at("c.entry"), Known.at("o.entry")), lot, cutoff);
    }

    private Optional<OffsetDateTime> read(String sql, long lot, long cutoff) {
        return jdbc.sql(sql)
                .param("lot", lot)
                .param("cutoff", cutoff)
                .query(OffsetDateTime.class)
                .optional();
    }
}
