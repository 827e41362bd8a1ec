package dev.sunthread.web.carrier;

import dev.sunthread.ledger.Known;
import dev.sunthread.web.Paged;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads what history tells of a carrier at a cut-off. */
@Repository
class CarrierPages {

    private static final int A_PAGE = 100;
    private static final String COUNT =
            "SELECT count(*) FROM production.carrier_load l WHERE l.carrier = :carrier AND " + Known.at("l.entry");

    /** A load ends at the first known unload of that thing, or of everything, behind it. */
    private static final String LOADS = """
            SELECT i.number AS item, u.serial, u.issuer, c.code AS carrier, l.position, l.loaded_at AS "from", (
                SELECT min(o.unloaded_at) FROM production.carrier_unload o
                WHERE o.carrier = l.carrier AND o.unloaded_at >= l.loaded_at
                  AND (o.unloaded_at > l.loaded_at OR o.entry > l.entry)
                  AND (o.unit = l.unit OR o.inner_carrier = l.inner_carrier OR o.unit IS NULL AND o.inner_carrier IS NULL)
                  AND %1$s) AS until, e.id AS entry
            FROM production.carrier_load l JOIN ledger.entry e ON e.number = l.entry
            LEFT JOIN production.unit u ON u.id = l.unit LEFT JOIN catalog.item i ON i.id = u.item
            LEFT JOIN production.carrier c ON c.id = l.%4$s
            WHERE l.%3$s = :carrier AND %2$s ORDER BY l.loaded_at DESC, l.entry DESC, l.ordinal LIMIT :most OFFSET :offset
            """;

    private static final String CURES = """
            SELECT n.number AS run, p.code AS recipe, q.code AS equipment, r.started_at AS "from", r.ended_at AS until
            FROM cure.run_carrier m JOIN cure.run_record r USING (entry) JOIN cure.run n ON n.id = r.run
            JOIN catalog.recipe p ON p.id = r.recipe JOIN catalog.equipment q ON q.id = r.equipment
            WHERE m.carrier = :carrier AND %s ORDER BY r.ended_at DESC, r.entry DESC
            """.formatted(Known.at("r.entry"));

    private final JdbcClient jdbc;

    CarrierPages(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    Optional<Long> find(String code) {
        return jdbc.sql("SELECT id FROM production.carrier WHERE code = ?")
                .param(code)
                .query(Long.class)
                .optional();
    }

    CarrierPage read(long carrier, String code, @Nullable Integer loads, long cutoff) {
        long total = about(carrier, cutoff, COUNT).query(Long.class).single();
        return new CarrierPage(
                code,
                Paged.of(loads, A_PAGE, total, (offset, most) -> loads(carrier, cutoff, offset, most)),
                read(carrier, cutoff, "inner_carrier", "carrier", 0, Integer.MAX_VALUE),
                about(carrier, cutoff, CURES)
                        .query(DataClassRowMapper.newInstance(CarrierPage.Cure.class))
                        .list());
    }

    List<CarrierPage.Load> everyLoad(long carrier, long cutoff) {
        return loads(carrier, cutoff, 0, Integer.MAX_VALUE);
    }

    private List<CarrierPage.Load> loads(long carrier, long cutoff, long offset, int most) {
        return read(carrier, cutoff, "carrier", "inner_carrier", offset, most);
    }

    private List<CarrierPage.Load> read(long carrier, long cutoff, String column, String other, long offset, int most) {
        return about(carrier, cutoff, LOADS.formatted(Known.at("o.entry"), Known.at("l.entry"), column, other))
                .param("most", most)
                .param("offset", offset)
                .query(DataClassRowMapper.newInstance(CarrierPage.Load.class))
                .list();
    }

    private JdbcClient.StatementSpec about(long carrier, long cutoff, String sql) {
        return jdbc.sql(sql).param("carrier", carrier).param("cutoff", cutoff);
    }
}
