package dev.sunthread.production;

import dev.sunthread.catalog.Item;
import dev.sunthread.catalog.Items;
import dev.sunthread.kernel.UnitId;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Serialised things. A serial that is named before its birth is known from then on, so that nothing recorded is lost. */
@Repository
public class Units {

    private final Items items;
    private final JdbcClient jdbc;

    Units(Items items, JdbcClient jdbc) {
        this.items = items;
        this.jdbc = jdbc;
    }

    /** The internal number of a unit, known from now on. @throws dev.sunthread.ledger.body.Unreadable if its item is not */
    long known(UnitName name, String field) {
        Item item = items.serialised(name.item(), field + ".item");
        Optional<Long> id = find(item.id(), name.id());
        if (id.isPresent()) {
            return id.get();
        }
        jdbc.sql("INSERT INTO production.unit (item, serial, issuer) VALUES (?, ?, ?) ON CONFLICT DO NOTHING")
                .params(item.id(), name.serial(), name.id().issuer())
                .update();
        return find(item.id(), name.id()).orElseThrow();
    }

    List<Long> known(List<UnitName> names, String field) {
        return List.copyOf(knownOnce(names, field).keySet());
    }

    /** Each unit once, by its internal number, with the first name it was given. */
    Map<Long, UnitName> knownOnce(List<UnitName> names, String field) {
        Map<Long, UnitName> units = new LinkedHashMap<>();
        for (int i = 0; i < names.size(); i++) {
            units.putIfAbsent(known(names.get(i), field + "[" + i + "]"), names.get(i));
        }
        return units;
    }

    /** The internal number of the unit with this identity, if it was ever named. */
    public Optional<Long> find(UnitId id) {
        return items.find(id.item()).flatMap(item -> find(item.id(), id));
    }

    private Optional<Long> find(long item, UnitId id) {
        return jdbc.sql("SELECT id FROM production.unit WHERE serial = ? AND item = ? AND issuer = ?")
                .params(id.serial(), item, id.issuer())
                .query(Long.class)
                .optional();
    }

    /** Lets one writer at a time say where these units are; always in the same order, so that none waits for ever. */
    void lock(Collection<Long> units) {
        jdbc.sql("SELECT id FROM production.unit WHERE id = ANY (?) ORDER BY id FOR UPDATE")
                .param(units.toArray(Long[]::new))
                .query()
                .listOfRows();
    }

    boolean isBorn(long unit) {
        return jdbc.sql("""
                        SELECT 1 FROM production.birth b
                        WHERE b.unit = ? AND NOT EXISTS (SELECT FROM ledger.withdrawal w WHERE w.target = b.entry) LIMIT 1
                        """).param(unit).query(Integer.class).optional().isPresent();
    }
}
