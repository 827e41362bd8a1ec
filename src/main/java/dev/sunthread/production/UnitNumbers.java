package dev.sunthread.production;

import dev.sunthread.ledger.EntryAtHand;
import dev.sunthread.ledger.Remembered;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The internal numbers of units, looked up and given out many at once. */
@Repository
class UnitNumbers {

    /** What makes the identity of a unit. */
    record Key(long item, String serial, String issuer) {}

    private static final Comparator<Key> ORDER =
            Comparator.comparing(Key::serial).thenComparing(Key::item).thenComparing(Key::issuer);

    private static final String KEYS =
            " FROM unnest(cast(:serials AS text[]), cast(:items AS bigint[]), cast(:issuers AS text[]))"
                    + " AS k (serial, item, issuer) ";

    private final Remembered remembered;
    private final NewUnits newUnits;
    private final EntryAtHand atHand;
    private final JdbcClient jdbc;

    UnitNumbers(Remembered remembered, NewUnits newUnits, EntryAtHand atHand, JdbcClient jdbc) {
        this.atHand = atHand;
        this.remembered = remembered;
        this.newUnits = newUnits;
        this.jdbc = jdbc;
    }

    /** The number of each, in the order asked, known from now on. */
    List<Long> known(List<Key> keys) {
        Map<Key, Long> numbers = Remembered.each(remembered.of("unit"), keys, this::knownFromNow);
        return keys.stream()
                .map(key -> Objects.requireNonNull(numbers.get(key)))
                .toList();
    }

    private Map<Key, Long> knownFromNow(Collection<Key> keys) {
        Map<Key, Long> numbers = find(keys);
        // in one order, so that two writers that name the same new units do not wait for each other for ever
        List<Key> unknown = keys.stream()
                .filter(key -> !numbers.containsKey(key))
                .distinct()
                .sorted(ORDER)
                .toList();
        if (!unknown.isEmpty()) {
            about(
                            unknown,
                            "INSERT INTO production.unit (serial, item, issuer, named_by)"
                                    + " SELECT k.serial, k.item, k.issuer, :entry" + KEYS + "ON CONFLICT DO NOTHING")
                    .param("entry", atHand.number())
                    .update();
            Map<Key, Long> made = find(unknown);
            newUnits.areMade(made.values());
            numbers.putAll(made);
        }
        return numbers;
    }

    Optional<Long> find(Key key) {
        return Optional.ofNullable(find(List.of(key)).get(key));
    }

    private Map<Key, Long> find(Collection<Key> keys) {
        Map<Key, Long> numbers = new HashMap<>();
        about(
                        keys,
                        "SELECT u.item, u.serial, u.issuer, u.id" + KEYS
                                + "JOIN production.unit u USING (serial, item, issuer)")
                .query(row -> {
                    numbers.put(new Key(row.getLong(1), row.getString(2), row.getString(3)), row.getLong(4));
                });
        return numbers;
    }

    private JdbcClient.StatementSpec about(Collection<Key> keys, String sql) {
        return jdbc.sql(sql)
                .param("serials", keys.stream().map(Key::serial).toArray(String[]::new))
                .param("items", keys.stream().map(Key::item).toArray(Long[]::new))
                .param("issuers", keys.stream().map(Key::issuer).toArray(String[]::new));
    }
}
