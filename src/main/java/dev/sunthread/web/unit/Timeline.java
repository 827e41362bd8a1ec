package dev.sunthread.web.unit;

import dev.sunthread.web.Paged;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** All that entries tell of a thing, the newest happening first, with what was taken back since. */
@Repository
public class Timeline {

    private static final String TOLD = """
            SELECT b.entry, b.born_at AS at, 'Born' || coalesce(' at ' || st.code, '') AS said,
                   NULL::bigint AS unit, NULL::bigint AS lot
            FROM production.birth b LEFT JOIN catalog.station st ON st.id = b.station WHERE b.unit = :unit
            UNION ALL
            SELECT s.entry, s.ended_at, 'Step ' || s.operation || ' at ' || st.code || coalesce(': ' || (
                     SELECT string_agg(v.name || ' ' || v.value || ' ' || v.unit_of_measure, ', ' ORDER BY v.name)
                     FROM production.step_value v WHERE v.entry = s.entry), ''), NULL, NULL
            FROM production.step_unit su JOIN production.step s USING (entry) JOIN catalog.station st ON st.id = s.station
            WHERE su.unit = :unit
            UNION ALL
            SELECT i.entry, i.installed_at, 'Put into position ' || pp.position || ' of', pp.parent, NULL
            FROM production.installation i JOIN production.parent_position pp ON pp.id = i.parent_position
            WHERE i.child_unit = :unit
            UNION ALL
            SELECT i.entry, i.installed_at, 'Took into position ' || pp.position, i.child_unit, i.child_lot
            FROM production.installation i JOIN production.parent_position pp ON pp.id = i.parent_position
            WHERE pp.parent = :unit
            UNION ALL
            SELECT r.entry, r.removed_at, 'Taken out of', r.parent, NULL FROM production.removal r WHERE r.child_unit = :unit
            UNION ALL
            SELECT r.entry, r.removed_at, 'Gave up', r.child_unit, r.child_lot
            FROM production.removal r WHERE r.parent = :unit
            UNION ALL
            SELECT s.entry, s.shipped_at, 'Shipped to ' || s.consignee || ', shipment ' || s.number, NULL, NULL
            FROM production.shipment_unit su JOIN production.shipment s USING (entry) WHERE su.unit = :unit
            UNION ALL
            SELECT r.entry, r.returned_at, 'Came back from ' || r.consignee, NULL, NULL
            FROM production.unit_return r WHERE r.unit = :unit
            UNION ALL
            SELECT h.entry, NULL, 'Put on hold: ' || h.reason, NULL, NULL
            FROM holds.hold h WHERE h.kind = 'UNIT' AND h.subject = :unit
            UNION ALL
            SELECT r.entry, NULL, 'Released from hold "' || h.reason || '": ' || r.why, NULL, NULL
            FROM holds.hold h JOIN holds.release r ON r.hold_entry = h.entry AND r.hold_ordinal = h.ordinal
            WHERE h.kind = 'UNIT' AND h.subject = :unit
            UNION ALL
            SELECT f.entry, NULL, 'Finding: ' || f.sentence, NULL, NULL
            FROM inbox.finding_subject fs JOIN inbox.finding f USING (entry, ordinal)
            WHERE fs.kind = 'UNIT' AND fs.subject = :unit
            """;

    private static final String ALL =
            (naming(TOLD) + " UNION ALL " + LaterHappenings.TOLD).replace(":unit", ":subject");

    private static final int A_PAGE = 100;

    private static final String STATION = """
            (SELECT st.code FROM catalog.station st WHERE st.id = coalesce(
              (SELECT x.station FROM production.step x WHERE x.entry = t.entry),
              (SELECT min(x.station) FROM production.birth x WHERE x.entry = t.entry),
              (SELECT x.station FROM production.installation x WHERE x.entry = t.entry),
              (SELECT x.station FROM production.removal x WHERE x.entry = t.entry),
              (SELECT min(x.station) FROM production.scrapping x WHERE x.entry = t.entry),
              (SELECT x.station FROM production.recovery x WHERE x.entry = t.entry),
              (SELECT p.station FROM materials.charge x JOIN catalog.position p ON p.id = x.position WHERE x.entry = t.entry)))
            """;

    private final JdbcClient jdbc;

    Timeline(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** A page of what entries tell of a unit. */
    Paged<Told> of(long unit, @Nullable Integer page, long cutoff) {
        return page(ALL, unit, page, cutoff);
    }

    /** All that entries tell of a unit. */
    List<Told> all(long unit, long cutoff) {
        return read(ALL, unit, cutoff, 0, Integer.MAX_VALUE);
    }

    /**
     * A page of what entries tell of a thing.
     *
     * @param told a query that gives entry, at, said, unit and lot of what is told of the parameter {@code subject}; at
     *     may be absent for when the entry occurred
     */
    public Paged<Told> told(String told, long subject, @Nullable Integer page, long cutoff) {
        return page(naming(told), subject, page, cutoff);
    }

    /** All that entries tell of a thing, by such a query. */
    public List<Told> allTold(String told, long subject, long cutoff) {
        return read(naming(told), subject, cutoff, 0, Integer.MAX_VALUE);
    }

    private Paged<Told> page(String told, long subject, @Nullable Integer page, long cutoff) {
        long total = jdbc.sql(
                        "SELECT count(*) FROM (%s) t JOIN ledger.position p ON p.entry = t.entry AND p.position <= :cutoff"
                                .formatted(told))
                .param("subject", subject)
                .param("cutoff", cutoff)
                .query(Long.class)
                .single();
        return Paged.of(page, A_PAGE, total, (offset, most) -> read(told, subject, cutoff, offset, most));
    }

    private static String naming(String told) {
        return "SELECT entry, at, said, unit, lot, NULL::text AS what, NULL::text AS name FROM (" + told + ") parts";
    }

    private List<Told> read(String told, long subject, long cutoff, long offset, int most) {
        return jdbc.sql("""
                        SELECT e.id AS entry, coalesce(t.at, e.occurred_at) AS at, t.said, i.number AS item, u.serial,
                               u.issuer, l.number AS lot, t.what, t.name, %s AS station, e.actor, e.source, e.recorded_at,
                               v.id AS voided_by, v.why AS voided_why
                        FROM (%s) t
                        JOIN ledger.entry e ON e.number = t.entry
                        JOIN ledger.position p ON p.entry = t.entry AND p.position <= :cutoff
                        LEFT JOIN production.unit u ON u.id = t.unit
                        LEFT JOIN catalog.item i ON i.id = u.item
                        LEFT JOIN materials.lot l ON l.id = t.lot
                        LEFT JOIN LATERAL (
                          SELECT we.id, w.why
                          FROM ledger.withdrawal w JOIN ledger.entry we ON we.number = w.entry
                          JOIN ledger.position wp ON wp.entry = w.entry AND wp.position <= :cutoff
                          WHERE w.target = t.entry ORDER BY wp.position LIMIT 1) v ON true
                        ORDER BY 2 DESC, p.position DESC, t.said LIMIT :most OFFSET :offset
                        """.formatted(STATION, told))
                .param("subject", subject)
                .param("cutoff", cutoff)
                .param("most", most)
                .param("offset", offset)
                .query(DataClassRowMapper.newInstance(Told.class))
                .list();
    }
}
