package dev.sunthread.web.home;

import dev.sunthread.holds.Holds;
import dev.sunthread.web.Paged;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads open holds with what they hold. */
@Repository
class HoldLists {

    private static final int A_PAGE = 100;
    private static final String OF_A_KIND =
            "FROM (" + Holds.KNOWN + ") h WHERE (cast(:kind AS text) IS NULL OR h.kind = upper(:kind)) ";

    private final JdbcClient jdbc;

    HoldLists(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** How many things of each kind are on hold, such as {@code lot} or {@code unit}. */
    Map<String, Long> things(long cutoff) {
        Map<String, Long> things = new TreeMap<>();
        jdbc.sql("SELECT lower(h.kind), count(DISTINCT h.subject) FROM (" + Holds.KNOWN + ") h GROUP BY h.kind")
                .param("cutoff", cutoff)
                .query(row -> {
                    things.put(row.getString(1), row.getLong(2));
                });
        return things;
    }

    Paged<HeldThing> open(@Nullable String kind, @Nullable Integer page, long cutoff) {
        long total = jdbc.sql("SELECT count(*) " + OF_A_KIND)
                .param("kind", kind)
                .param("cutoff", cutoff)
                .query(Long.class)
                .single();
        return Paged.of(page, A_PAGE, total, (offset, most) -> read(kind, cutoff, offset, most));
    }

    List<HeldThing> all(@Nullable String kind, long cutoff) {
        return read(kind, cutoff, 0, Integer.MAX_VALUE);
    }

    private List<HeldThing> read(@Nullable String kind, long cutoff, long offset, int most) {
        return jdbc.sql("""
                        SELECT h.entry, h.ordinal, h.reason, h.since, l.number AS lot, k.label AS container, i.number AS item,
                               u.serial, u.issuer
                        FROM (SELECT h.* %s ORDER BY h.since DESC, h.entry, h.ordinal LIMIT :most OFFSET :offset) h
                        LEFT JOIN materials.lot l ON h.kind = 'LOT' AND l.id = h.subject
                        LEFT JOIN materials.container k ON h.kind = 'CONTAINER' AND k.id = h.subject
                        LEFT JOIN production.unit u ON h.kind = 'UNIT' AND u.id = h.subject
                        LEFT JOIN catalog.item i ON i.id = u.item
                        ORDER BY h.since DESC, h.entry, h.ordinal
                        """.formatted(OF_A_KIND))
                .param("kind", kind)
                .param("cutoff", cutoff)
                .param("most", most)
                .param("offset", offset)
                .query(DataClassRowMapper.newInstance(HeldThing.class))
                .list();
    }
}
