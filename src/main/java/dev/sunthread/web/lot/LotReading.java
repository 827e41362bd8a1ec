package dev.sunthread.web.lot;

import dev.sunthread.ledger.Known;
import dev.sunthread.materials.Charges;
import dev.sunthread.web.Paged;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads what history tells of a lot at a cut-off. */
@Repository
class LotReading {

    private static final int A_PAGE = 50;

    private static final String USES = """
            FROM production.step_use su JOIN production.step s USING (entry) JOIN production.step_unit sn USING (entry)
            WHERE su.lot = :lot AND %s
            """.formatted(Known.at("s.entry"));

    private static final String PARTS =
            "FROM production.installation n WHERE n.child_lot = :lot AND " + Known.at("n.entry");

    private final JdbcClient jdbc;

    LotReading(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<Received> receipts(long lot, long cutoff) {
        return about(lot, cutoff, """
                        SELECT r.received_at, i.number, r.quantity, r.unit_of_measure, r.supplier,
                          ARRAY(SELECT s.supplier_lot FROM materials.receipt_supplier_lot s
                                WHERE s.entry = r.entry ORDER BY 1),
                          r.expires_at, e.id
                        FROM materials.receipt r JOIN catalog.item i ON i.id = r.item JOIN ledger.entry e ON e.number = r.entry
                        WHERE r.lot = :lot AND %s ORDER BY r.received_at, r.entry
                        """.formatted(Known.at("r.entry")))
                .query((rs, n) -> new Received(
                        rs.getObject(1, OffsetDateTime.class),
                        rs.getString(2),
                        rs.getBigDecimal(3),
                        rs.getString(4),
                        rs.getString(5),
                        Arrays.asList((String[]) rs.getArray(6).getArray()),
                        rs.getObject(7, OffsetDateTime.class),
                        rs.getString(8)))
                .list();
    }

    List<Charged> charges(long lot, long cutoff) {
        return about(lot, cutoff, """
                        SELECT st.code AS station, p.code AS position, c.charged_at AS "from", c.until, e.id AS entry
                        FROM (%s) c JOIN catalog.position p ON p.id = c.position
                        JOIN catalog.station st ON st.id = p.station JOIN ledger.entry e ON e.number = c.entry
                        WHERE c.lot = :lot ORDER BY c.charged_at DESC, c.entry DESC
                        """.formatted(Charges.KNOWN))
                .query(DataClassRowMapper.newInstance(Charged.class))
                .list();
    }

    Paged<UsedIn> uses(long lot, @Nullable Integer page, long cutoff) {
        return Paged.of(page, A_PAGE, count(USES, lot, cutoff), (offset, most) -> uses(lot, cutoff, offset, most));
    }

    List<UsedIn> allUses(long lot, long cutoff) {
        return uses(lot, cutoff, 0, Integer.MAX_VALUE);
    }

    private List<UsedIn> uses(long lot, long cutoff, long offset, int most) {
        return about(lot, cutoff, """
                        SELECT x.ended_at AS at, x.operation AS doing, st.code AS station, i.level, i.number AS item,
                               u.serial, u.issuer, NULL::timestamptz AS until
                        FROM (SELECT s.ended_at, s.operation, s.station, sn.unit %s
                              ORDER BY s.ended_at DESC, s.entry DESC, sn.unit LIMIT :most OFFSET :offset) x
                        JOIN catalog.station st ON st.id = x.station
                        JOIN production.unit u ON u.id = x.unit JOIN catalog.item i ON i.id = u.item
                        ORDER BY x.ended_at DESC, u.serial
                        """.formatted(USES))
                .param("offset", offset)
                .param("most", most)
                .query(DataClassRowMapper.newInstance(UsedIn.class))
                .list();
    }

    Paged<UsedIn> parts(long lot, @Nullable Integer page, long cutoff) {
        return Paged.of(page, A_PAGE, count(PARTS, lot, cutoff), (offset, most) -> parts(lot, cutoff, offset, most));
    }

    List<UsedIn> allParts(long lot, long cutoff) {
        return parts(lot, cutoff, 0, Integer.MAX_VALUE);
    }

    private List<UsedIn> parts(long lot, long cutoff, long offset, int most) {
        return about(lot, cutoff, """
                        SELECT x.installed_at AS at, 'position ' || pp.position AS doing, st.code AS station, i.level,
                          i.number AS item, u.serial, u.issuer,
                          (SELECT min(r.removed_at) FROM production.removal r
                           WHERE r.child_lot = :lot AND r.parent_position = x.parent_position
                             AND (r.removed_at, r.entry) > (x.installed_at, x.entry) AND %s) AS until
                        FROM (SELECT n.entry, n.installed_at, n.parent_position, n.station %s
                              ORDER BY n.installed_at DESC, n.entry DESC LIMIT :most OFFSET :offset) x
                        JOIN production.parent_position pp ON pp.id = x.parent_position
                        JOIN production.unit u ON u.id = pp.parent JOIN catalog.item i ON i.id = u.item
                        LEFT JOIN catalog.station st ON st.id = x.station
                        ORDER BY x.installed_at DESC, u.serial
                        """.formatted(Known.at("r.entry"), PARTS))
                .param("offset", offset)
                .param("most", most)
                .query(DataClassRowMapper.newInstance(UsedIn.class))
                .list();
    }

    private long count(String of, long lot, long cutoff) {
        return about(lot, cutoff, "SELECT count(*) " + of).query(Long.class).single();
    }

    private JdbcClient.StatementSpec about(long lot, long cutoff, String sql) {
        return jdbc.sql(sql).param("lot", lot).param("cutoff", cutoff);
    }
}
