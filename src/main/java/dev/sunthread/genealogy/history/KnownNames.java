package dev.sunthread.genealogy.history;

import dev.sunthread.kernel.Refused;
import dev.sunthread.kernel.UnitId;
import dev.sunthread.ledger.Known;
import java.util.Map;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The numbers of things by what people call them, of those that were named or released by a cut-off. */
public final class KnownNames {

    private static final String UNIT = """
            SELECT u.id FROM production.unit u JOIN catalog.item i ON i.id = u.item
            WHERE i.number = :item AND u.serial = :serial AND u.issuer = :issuer AND %s
            """.formatted(Known.named("u"));

    private static final String NAMED = "SELECT t.id FROM %s t WHERE t.%s = :name AND " + Known.named("t");

    private static final String WITH_RECORD = "SELECT t.id FROM %1$s t WHERE t.%2$s = :name AND EXISTS ("
            + "SELECT FROM %3$s r WHERE r.%4$s = t.id AND "
            + "(SELECT kp.position FROM ledger.position kp WHERE kp.entry = r.entry) <= :cutoff)";

    private final JdbcClient jdbc;
    private final long cutoff;

    public KnownNames(JdbcClient jdbc, long cutoff) {
        this.jdbc = jdbc;
        this.cutoff = cutoff;
    }

    /** @throws Refused, as all of these, if nothing of that name was recorded by then */
    public long unit(UnitId id) {
        return found(UNIT, Map.of("item", id.item(), "serial", id.serial(), "issuer", id.issuer()), "Unit " + id);
    }

    public long lot(String number) {
        return named("materials.lot", "number", "Lot ", number);
    }

    public long container(String label) {
        return named("materials.container", "label", "Container ", label);
    }

    public long carrier(String code) {
        return named("production.carrier", "code", "Carrier ", code);
    }

    public long cureRun(String number) {
        return recorded("cure.run", "number", "cure.run_record", "run", "Cure run ", number);
    }

    public long testRun(String number) {
        return recorded("electrical.run", "number", "electrical.run_record", "run", "Test run ", number);
    }

    public long item(String number) {
        return recorded("catalog.item", "number", "catalog.item_revision", "item", "Item ", number);
    }

    public long station(String code) {
        return recorded("catalog.station", "code", "catalog.station_revision", "station", "Station ", code);
    }

    public long equipment(String code) {
        return recorded("catalog.equipment", "code", "catalog.equipment_revision", "equipment", "Equipment ", code);
    }

    private long named(String table, String column, String what, String name) {
        return found(NAMED.formatted(table, column), Map.of("name", name), what + name);
    }

    private long recorded(String table, String column, String history, String of, String what, String name) {
        return found(WITH_RECORD.formatted(table, column, history, of), Map.of("name", name), what + name);
    }

    private long found(String sql, Map<String, String> params, String what) {
        return jdbc.sql(sql)
                .params(params)
                .param("cutoff", cutoff)
                .query((row, number) -> row.getLong(1))
                .optional()
                .orElseThrow(() -> new Refused(what + " is not recorded", "Look for near matches with the search box"));
    }
}
