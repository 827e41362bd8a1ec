package dev.sunthread.materials;

import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Lot numbers. A number that is named before its receipt is known from then on, so that nothing recorded is lost. */
@Repository
public class Lots {

    private final JdbcClient jdbc;

    Lots(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The internal number of a lot, known from now on. */
    public long known(String number) {
        Optional<Long> id = find(number);
        if (id.isPresent()) {
            return id.get();
        }
        jdbc.sql("INSERT INTO materials.lot (number) VALUES (?) ON CONFLICT (number) DO NOTHING")
                .param(number)
                .update();
        return find(number).orElseThrow();
    }

    public Optional<Long> find(String number) {
        return jdbc.sql("SELECT id FROM materials.lot WHERE number = ?")
                .param(number)
                .query(Long.class)
                .optional();
    }

    /** Whether a receipt that is not withdrawn says where the lot comes from. */
    public boolean received(long lot) {
        return jdbc.sql("""
                        SELECT 1 FROM materials.receipt r
                        WHERE r.lot = ? AND NOT EXISTS (SELECT FROM ledger.withdrawal w WHERE w.target = r.entry) LIMIT 1
                        """).param(lot).query(Integer.class).optional().isPresent();
    }
}
