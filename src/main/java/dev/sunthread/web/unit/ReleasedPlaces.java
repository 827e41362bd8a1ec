package dev.sunthread.web.unit;

import dev.sunthread.ledger.Known;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads which positions released structures name, and the items that belong there. */
@Repository
class ReleasedPlaces {

    private final JdbcClient jdbc;

    ReleasedPlaces(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** By item and position, what belongs there by the structure in force at a time; alternates joined by "or". */
    Map<String, Map<String, String>> of(Set<String> items, OffsetDateTime at, long cutoff) {
        Map<String, Map<String, String>> places = new HashMap<>();
        jdbc.sql("""
                        SELECT i.number, p.position, string_agg(c.number, ' or ' ORDER BY c.number)
                        FROM catalog.item i CROSS JOIN LATERAL (
                          SELECT r.entry FROM catalog.structure_revision r
                          WHERE r.item = i.id AND r.effective_at <= :at AND %s
                          ORDER BY r.effective_at DESC, r.entry DESC LIMIT 1) s
                        JOIN catalog.structure_position p ON p.entry = s.entry JOIN catalog.item c ON c.id = p.item
                        WHERE i.number = ANY (:items) GROUP BY i.number, p.position
                        """.formatted(Known.at("r.entry")))
                .param("items", items.toArray(String[]::new))
                .param("at", at)
                .param("cutoff", cutoff)
                .query(row -> {
                    places.computeIfAbsent(row.getString(1), item -> new TreeMap<>())
                            .put(row.getString(2), row.getString(3));
                });
        return places;
    }
}
