package dev.sunthread.production;

import dev.sunthread.catalog.Items;
import dev.sunthread.kernel.UnitId;
import dev.sunthread.ledger.SoleWriter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntFunction;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Serialised things. A serial that is named before its birth is known from then on, so that nothing recorded is lost. */
@Repository
public class Units {

    private final Items items;
    private final UnitNumbers numbers;
    private final SoleWriter sole;
    private final JdbcClient jdbc;

    Units(Items items, UnitNumbers numbers, SoleWriter sole, JdbcClient jdbc) {
        this.items = items;
        this.numbers = numbers;
        this.sole = sole;
        this.jdbc = jdbc;
    }

    /** The internal number of a unit, known from now on. @throws dev.sunthread.ledger.body.Unreadable if its item is not */
    public long known(UnitName name, String field) {
        return known(List.of(name), i -> field).get(0);
    }

    /** The internal number of each unit that a body names at a field, in their order; looked up at once. */
    public List<Long> known(List<UnitName> names, IntFunction<String> field) {
        List<UnitNumbers.Key> keys = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            UnitId id = names.get(i).id();
            long item = items.serialised(id.item(), field.apply(i) + ".item").id();
            keys.add(new UnitNumbers.Key(item, id.serial(), id.issuer()));
        }
        return numbers.known(keys);
    }

    List<Long> known(List<UnitName> names, String field) {
        return List.copyOf(knownOnce(names, field).keySet());
    }

    /** Each unit once, by its internal number, with the first name it was given. */
    public Map<Long, UnitName> knownOnce(List<UnitName> names, String field) {
        return once(names, known(names, i -> field + "[" + i + "]"));
    }

    /** Each unit once, by its internal number among the numbers of all, with the first name it was given. */
    public Map<Long, UnitName> once(List<UnitName> names, List<Long> numbers) {
        Map<Long, UnitName> units = new LinkedHashMap<>();
        for (int i = 0; i < names.size(); i++) {
            units.putIfAbsent(numbers.get(i), names.get(i));
        }
        return units;
    }

    /** The internal number of the item of a unit that is known. */
    long item(UnitName name) {
        return items.find(name.item()).orElseThrow().id();
    }

    /** The internal number of the unit with this identity, if it was ever named. */
    public Optional<Long> find(UnitId id) {
        return items.find(id.item())
                .flatMap(item -> numbers.find(new UnitNumbers.Key(item.id(), id.serial(), id.issuer())));
    }

    /** Lets one writer at a time say where these units are; always in the same order, so that none waits for ever. */
    public void lock(Collection<Long> units) {
        if (sole.isSole()) {
            return;
        }
        jdbc.sql("SELECT id FROM production.unit WHERE id = ANY (?) ORDER BY id FOR UPDATE")
                .param(units.toArray(Long[]::new))
                .query()
                .listOfRows();
    }
}
