package dev.sunthread.materials;

import dev.sunthread.ledger.EntryAtHand;
import dev.sunthread.ledger.Known;
import dev.sunthread.ledger.Remembered;
import dev.sunthread.ledger.SoleWriter;
import java.util.Map;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Lot numbers. A number that is named before its receipt is known from then on, so that nothing recorded is lost. */
@Repository
public class Lots {

    static final String EXPIRIES = "expiries";

    private static final String ITEMS = "items of lots";

    private final Remembered remembered;
    private final SoleWriter sole;
    private final EntryAtHand atHand;
    private final JdbcClient jdbc;

    Lots(Remembered remembered, SoleWriter sole, EntryAtHand atHand, JdbcClient jdbc) {
        this.atHand = atHand;
        this.sole = sole;
        this.remembered = remembered;
        this.jdbc = jdbc;
    }

    /** The internal number of a lot, known from now on. */
    public long known(String number) {
        return remembered.<String, Long>of("lot").computeIfAbsent(number, this::knownFromNow);
    }

    private long knownFromNow(String number) {
        Optional<Long> id = find(number);
        if (id.isPresent()) {
            return id.get();
        }
        jdbc.sql("INSERT INTO materials.lot (number, named_by) VALUES (?, ?) ON CONFLICT (number) DO NOTHING")
                .params(number, atHand.number())
                .update();
        return find(number).orElseThrow();
    }

    public Optional<Long> find(String number) {
        return jdbc.sql("SELECT id FROM materials.lot WHERE number = ?")
                .param(number)
                .query(Long.class)
                .optional();
    }

    /** The number on the label of a lot. */
    public String number(long lot) {
        return remembered.<Long, String>of("lot numbers").computeIfAbsent(lot, this::askNumber);
    }

    private String askNumber(long lot) {
        return jdbc.sql("SELECT number FROM materials.lot WHERE id = ?")
                .param(lot)
                .query(String.class)
                .single();
    }

    /** Says that the origin of a lot is being recorded. */
    void originChanged(long lot) {
        sole.known(ITEMS).remove(lot);
        sole.known(EXPIRIES).clear();
    }

    /** Whether a receipt, or the record of its making, says where the lot comes from. */
    public boolean hasOrigin(long lot) {
        Map<Long, Boolean> known = sole.known("origins");
        if (known.containsKey(lot)) {
            return true;
        }
        boolean has = about(lot, "SELECT 1 FROM materials.lot_origin o WHERE o.lot = ? AND %s LIMIT 1")
                .query(Integer.class)
                .optional()
                .isPresent();
        if (has) {
            // only this stays true until a withdrawal
            known.put(lot, true);
        }
        return has;
    }

    /** The internal number of the item that a lot is of, as last recorded; empty if nothing tells it. */
    public Optional<Long> itemOf(long lot) {
        return sole.<Long, Optional<Long>>known(ITEMS).computeIfAbsent(lot, this::askItemOf);
    }

    private Optional<Long> askItemOf(long lot) {
        return about(lot, """
                        SELECT o.item FROM materials.lot_origin o
                        WHERE o.lot = ? AND o.item IS NOT NULL AND %s ORDER BY o.entry DESC LIMIT 1
                        """).query(Long.class).optional();
    }

    /** The unit that quantities of a lot are stated in, by the item it is of; empty if nothing tells it. */
    public Optional<String> unitOf(long lot) {
        return itemOf(lot)
                .flatMap(item -> jdbc.sql("SELECT unit_of_measure FROM catalog.item WHERE id = ?")
                        .param(item)
                        .query(String.class)
                        .optional());
    }

    private JdbcClient.StatementSpec about(long lot, String sql) {
        return jdbc.sql(sql.formatted(Known.now("o.entry"))).param(lot);
    }
}
