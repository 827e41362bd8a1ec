package dev.sunthread.production;

import dev.sunthread.ledger.EntryAtHand;
import dev.sunthread.ledger.Remembered;
import dev.sunthread.ledger.SoleWriter;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Trays, pallets and racks, by the code on them; a code that is named is known from then on. */
@Repository
public class Carriers {

    /**
     * Tables {@code inside} of carrier and during, and {@code units_on} of unit, carrier and position: all that was on the
     * carriers of a table {@code loaded} of carrier and during, at any depth. For the inside of a recursive WITH.
     */
    public static final String CONTENTS = """
            inside (carrier, during) AS (
              SELECT carrier, during FROM loaded
              UNION
              SELECT c.inner_carrier, x.during * c.during FROM inside x JOIN production.carrying c ON %1$s
              WHERE c.inner_carrier IS NOT NULL),
            units_on AS (
              SELECT c.unit, c.carrier, c.position FROM inside x JOIN production.carrying c ON %1$s WHERE c.unit IS NOT NULL)
            """.formatted(CarrierHistory.ON_IT);

    private static final String ON_THEM = """
            WITH RECURSIVE loaded AS (SELECT k AS carrier, tstzrange(:from, :to, '[]') AS during FROM unnest(:carriers) k),
            %s
            SELECT DISTINCT u.id, i.number, u.serial, u.issuer
            FROM units_on n JOIN production.unit u ON u.id = n.unit JOIN catalog.item i ON i.id = u.item
            ORDER BY i.number, u.serial, u.issuer
            """.formatted(CONTENTS);

    private final Remembered remembered;
    private final SoleWriter sole;
    private final EntryAtHand atHand;
    private final JdbcClient jdbc;

    Carriers(Remembered remembered, SoleWriter sole, EntryAtHand atHand, JdbcClient jdbc) {
        this.atHand = atHand;
        this.remembered = remembered;
        this.sole = sole;
        this.jdbc = jdbc;
    }

    /** The internal number of a carrier, known from now on. */
    public long known(String code) {
        return known(List.of(code)).get(0);
    }

    /** The internal number of each carrier, in their order, known from now on. */
    public List<Long> known(List<String> codes) {
        Map<String, Long> numbers =
                Remembered.each(remembered.of("carrier"), codes, asked -> knownFromNow(new TreeSet<>(asked)));
        return codes.stream()
                .map(code -> Objects.requireNonNull(numbers.get(code)))
                .toList();
    }

    private Map<String, Long> knownFromNow(TreeSet<String> codes) {
        Map<String, Long> numbers = find(codes);
        TreeSet<String> unknown = new TreeSet<>(codes);
        unknown.removeAll(numbers.keySet());
        if (!unknown.isEmpty()) {
            jdbc.sql("INSERT INTO production.carrier (code, named_by) SELECT unnest(?), ? ON CONFLICT DO NOTHING")
                    .params(unknown.toArray(String[]::new), atHand.number())
                    .update();
            numbers.putAll(find(unknown));
        }
        return numbers;
    }

    private Map<String, Long> find(Collection<String> codes) {
        Map<String, Long> numbers = new HashMap<>();
        if (codes.isEmpty()) {
            return numbers;
        }
        jdbc.sql("SELECT code, id FROM production.carrier WHERE code = ANY (?)")
                .param(codes.toArray(String[]::new))
                .query(row -> {
                    numbers.put(row.getString(1), row.getLong(2));
                });
        return numbers;
    }

    /** The units that were on these carriers at any moment of a time, at any depth, as known now. */
    public Map<Long, UnitName> unitsOn(Collection<Long> carriers, OffsetDateTime from, OffsetDateTime to) {
        Map<Long, UnitName> units = new LinkedHashMap<>();
        if (carriers.isEmpty()) {
            return units;
        }
        jdbc.sql(ON_THEM)
                .param("carriers", carriers.toArray(Long[]::new))
                .param("from", from)
                .param("to", to)
                .query(row -> {
                    units.put(row.getLong(1), new UnitName(row.getString(2), row.getString(3), row.getString(4)));
                });
        return units;
    }

    /** Lets one writer at a time say what is on these carriers or where they are; always in the same order. */
    void lock(Collection<Long> carriers) {
        if (sole.isSole()) {
            return;
        }
        jdbc.sql("SELECT id FROM production.carrier WHERE id = ANY (?) ORDER BY id FOR UPDATE")
                .param(carriers.toArray(Long[]::new))
                .query()
                .listOfRows();
    }
}
