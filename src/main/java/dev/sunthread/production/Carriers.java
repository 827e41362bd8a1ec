package dev.sunthread.production;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Trays, pallets and racks, by the code on them; a code that is named is known from then on. */
@Repository
public class Carriers {

    private final JdbcClient jdbc;

    Carriers(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The internal number of a carrier, known from now on. */
    public long known(String code) {
        return known(List.of(code)).get(0);
    }

    /** The internal number of each carrier, in their order, known from now on. */
    public List<Long> known(List<String> codes) {
        Map<String, Long> numbers = find(codes);
        TreeSet<String> unknown = new TreeSet<>(codes);
        unknown.removeAll(numbers.keySet());
        if (!unknown.isEmpty()) {
            jdbc.sql("INSERT INTO production.carrier (code) SELECT unnest(?) ON CONFLICT DO NOTHING")
                    .param(unknown.toArray(String[]::new))
                    .update();
            numbers.putAll(find(unknown));
        }
        return codes.stream()
                .map(code -> Objects.requireNonNull(numbers.get(code)))
                .toList();
    }

    private Map<String, Long> find(Collection<String> codes) {
        Map<String, Long> numbers = new HashMap<>();
        jdbc.sql("SELECT code, id FROM production.carrier WHERE code = ANY (?)")
                .param(codes.toArray(String[]::new))
                .query(row -> {
                    numbers.put(row.getString(1), row.getLong(2));
                });
        return numbers;
    }

    /** Lets one writer at a time say what is on these carriers or where they are; always in the same order. */
    void lock(Collection<Long> carriers) {
        jdbc.sql("SELECT id FROM production.carrier WHERE id = ANY (?) ORDER BY id FOR UPDATE")
                .param(carriers.toArray(Long[]::new))
                .query()
                .listOfRows();
    }
}
