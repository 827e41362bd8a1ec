package dev.sunthread.web.home;

import dev.sunthread.ledger.Known;
import dev.sunthread.web.Paged;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Finds received lots that wait for their incoming release, those received first first. */
@Repository
class WaitingLots {

    private static final int A_PAGE = 100;
    private static final String WAITING = """
            FROM materials.receipt r JOIN materials.lot l ON l.id = r.lot JOIN catalog.item i ON i.id = r.item
            WHERE %s
              AND NOT EXISTS (SELECT FROM materials.incoming_release x WHERE x.lot = r.lot AND %s)
              AND NOT EXISTS (SELECT FROM materials.lot_ending n WHERE n.lot = r.lot AND n.container IS NULL AND %s)
            """.formatted(Known.at("r.entry"), Known.at("x.entry"), Known.at("n.entry"));

    private final JdbcClient jdbc;

    WaitingLots(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    long count(long cutoff) {
        return jdbc.sql("SELECT count(*) " + WAITING)
                .param("cutoff", cutoff)
                .query(Long.class)
                .single();
    }

    Paged<WaitingLot> list(@Nullable Integer page, long cutoff) {
        return Paged.of(page, A_PAGE, count(cutoff), (offset, most) -> read(cutoff, offset, most));
    }

    List<WaitingLot> all(long cutoff) {
        return read(cutoff, 0, Integer.MAX_VALUE);
    }

    private List<WaitingLot> read(long cutoff, long offset, int most) {
        return jdbc.sql("""
                        SELECT l.number, i.number, r.received_at, r.quantity, r.unit_of_measure, r.supplier,
                          ARRAY(SELECT s.supplier_lot FROM materials.receipt_supplier_lot s WHERE s.entry = r.entry ORDER BY 1)
                        %s ORDER BY r.received_at, r.entry LIMIT :most OFFSET :offset
                        """.formatted(WAITING))
                .param("cutoff", cutoff)
                .param("most", most)
                .param("offset", offset)
                .query((row, number) -> new WaitingLot(
                        row.getString(1),
                        row.getString(2),
                        row.getObject(3, OffsetDateTime.class),
                        row.getBigDecimal(4),
                        row.getString(5),
                        row.getString(6),
                        Arrays.asList((String[]) row.getArray(7).getArray())))
                .list();
    }
}
