package dev.sunthread.production;

import dev.sunthread.ledger.Known;
import dev.sunthread.ledger.Remembered;
import dev.sunthread.ledger.SoleWriter;
import java.time.OffsetDateTime;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Whether units are born, and when they were scrapped, as known now. */
@Repository
class UnitLives {

    private final SoleWriter sole;
    private final JdbcClient jdbc;

    UnitLives(SoleWriter sole, JdbcClient jdbc) {
        this.sole = sole;
        this.jdbc = jdbc;
    }

    private Map<Long, Boolean> births() {
        return sole.known("births");
    }

    private Map<Long, OffsetDateTime> scrappings() {
        return sole.known("scrappings");
    }

    /** Says that these units were not there before the transaction, so that nothing is recorded of them. */
    void begin(Collection<Long> units) {
        units.forEach(unit -> {
            births().put(unit, false);
            scrappings().put(unit, OffsetDateTime.MAX);
        });
    }

    /** Which of these have a birth record. */
    Set<Long> born(Collection<Long> units) {
        return Remembered.each(births(), units, this::askBorn).entrySet().stream()
                .filter(Map.Entry::getValue)
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
    }

    private Map<Long, Boolean> askBorn(Collection<Long> units) {
        Map<Long, Boolean> born = new HashMap<>();
        units.forEach(unit -> born.put(unit, false));
        jdbc.sql("SELECT b.unit FROM production.birth b WHERE b.unit = ANY (:units) AND " + Known.now("b.entry"))
                .param("units", units.toArray(Long[]::new))
                .query(row -> {
                    born.put(row.getLong(1), true);
                });
        return born;
    }

    /** Says that births of these units are being recorded. */
    void areBorn(Collection<Long> units) {
        units.forEach(unit -> births().put(unit, true));
    }

    /** The entry that first told the birth of a unit that is born. */
    long birthOf(long unit) {
        return jdbc.sql("SELECT min(b.entry) FROM production.birth b WHERE b.unit = ? AND " + Known.now("b.entry"))
                .param(unit)
                .query(Long.class)
                .single();
    }

    /** Which of these were scrapped by a time. */
    Set<Long> scrapped(Collection<Long> units, OffsetDateTime at) {
        Map<Long, OffsetDateTime> first = Remembered.each(scrappings(), units, this::askFirstScrapped);
        return units.stream()
                .filter(unit -> !first.getOrDefault(unit, OffsetDateTime.MAX).isAfter(at))
                .collect(Collectors.toSet());
    }

    private Map<Long, OffsetDateTime> askFirstScrapped(Collection<Long> units) {
        Map<Long, OffsetDateTime> first = new HashMap<>();
        units.forEach(unit -> first.put(unit, OffsetDateTime.MAX));
        jdbc.sql("SELECT s.unit, min(s.scrapped_at) FROM production.scrapping s WHERE s.unit = ANY (:units) AND "
                        + Known.now("s.entry") + " GROUP BY s.unit")
                .param("units", units.toArray(Long[]::new))
                .query(row -> {
                    first.put(row.getLong(1), row.getObject(2, OffsetDateTime.class));
                });
        return first;
    }

    /** Says that scrappings of these units are being recorded. */
    void areScrapped(Collection<Long> units) {
        scrappings().keySet().removeAll(units);
    }
}
