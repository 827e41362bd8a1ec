package dev.sunthread.web.label;

import dev.sunthread.ledger.Known;
import dev.sunthread.ledger.Sealer;
import dev.sunthread.materials.Expiry;
import dev.sunthread.materials.Lots;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What a label says of lots beside their number. */
@Repository
class LotLines {

    private final Sealer sealer;
    private final Lots lots;
    private final Expiry expiry;
    private final JdbcClient jdbc;

    LotLines(Sealer sealer, Lots lots, Expiry expiry, JdbcClient jdbc) {
        this.sealer = sealer;
        this.lots = lots;
        this.expiry = expiry;
        this.jdbc = jdbc;
    }

    /** The number of the item that a lot is of, as far as it is told. */
    Optional<String> item(String number) {
        return lots.find(number)
                .flatMap(lots::itemOf)
                .map(item -> jdbc.sql("SELECT number FROM catalog.item WHERE id = ?")
                        .param(item)
                        .query(String.class)
                        .single());
    }

    Optional<OffsetDateTime> expiresAt(String number) {
        return lots.find(number).flatMap(lot -> expiry.at(lot, sealer.seal()));
    }

    /** The numbers of the lots that were filled into a container. */
    List<String> inContainer(String label) {
        return jdbc.sql("""
                        SELECT DISTINCT l.number FROM materials.container_filling f
                        JOIN materials.container c ON c.id = f.container JOIN materials.lot l ON l.id = f.lot
                        WHERE c.label = ? AND %s ORDER BY 1 LIMIT 3
                        """.formatted(Known.now("f.entry")))
                .param(label)
                .query(String.class)
                .list();
    }
}
