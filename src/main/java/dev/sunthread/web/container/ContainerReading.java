package dev.sunthread.web.container;

import dev.sunthread.ledger.Known;
import dev.sunthread.web.Paged;
import dev.sunthread.web.unit.Timeline;
import dev.sunthread.web.unit.Told;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads what history tells of a container at a cut-off. */
@Repository
class ContainerReading {

    private static final String TOLD = """
            SELECT f.entry, f.filled_at AS at, concat('Filled with ', f.quantity || ' ' || f.unit_of_measure || ' of') AS said,
                   NULL::bigint AS unit, f.lot
            FROM materials.container_filling f WHERE f.container = :subject
            UNION ALL
            SELECT o.entry, o.opened_at, 'Opened', NULL, NULL
            FROM materials.container_opening o WHERE o.container = :subject
            UNION ALL
            SELECT m.entry, m.moved_at, 'Put to ' || m.place || ', ' || CASE m.storage WHEN 'ROOM' THEN 'at room temperature'
                     ELSE lower(m.storage) END, NULL, NULL
            FROM materials.container_move m WHERE m.container = :subject
            UNION ALL
            SELECT c.entry, c.charged_at, 'Loaded at position ' || p.code || ' of ' || st.code || ' as', NULL, c.lot
            FROM materials.charge c JOIN catalog.position p ON p.id = c.position JOIN catalog.station st ON st.id = p.station
            WHERE c.container = :subject
            UNION ALL
            SELECT s.entry, s.changed_at, concat(CASE s.way WHEN 'COUNT' THEN 'Counted ' WHEN 'ISSUE' THEN 'Issued '
                     WHEN 'STOCK_RETURN' THEN 'Brought back ' WHEN 'WASTE' THEN 'Wasted ' ELSE 'Sampled ' END,
                     s.quantity, ' ', s.unit_of_measure, ', ' || s.place, ', ' || s.why), NULL, NULL
            FROM materials.stock_change s WHERE s.container = :subject
            UNION ALL
            SELECT c.entry, m.made_at, concat('Gave ', c.quantity || ' ' || c.unit_of_measure || ' ', 'to'), NULL, c.lot
            FROM materials.lot_component c JOIN materials.lot_making m ON m.entry = c.entry AND m.lot = c.lot
            WHERE c.container = :subject
            UNION ALL
            SELECT su.entry, s.ended_at, 'Used by step ' || s.operation || ' at ' || st.code
                     || coalesce(': ' || su.quantity || ' ' || su.unit_of_measure || ' each', '') || ' in', sn.unit, NULL
            FROM production.step_use su JOIN production.step s USING (entry) JOIN production.step_unit sn USING (entry)
            JOIN catalog.station st ON st.id = s.station WHERE su.container = :subject
            UNION ALL
            SELECT n.entry, n.ended_at, CASE n.why WHEN 'USED_UP' THEN 'Used up' WHEN 'SCRAPPED' THEN 'Scrapped'
                     ELSE 'Sent back to the supplier' END, NULL, NULL
            FROM materials.lot_ending n WHERE n.container = :subject
            UNION ALL
            SELECT f.entry, NULL, 'Finding: ' || f.sentence, NULL, NULL
            FROM inbox.finding_subject fs JOIN inbox.finding f USING (entry, ordinal)
            WHERE fs.kind = 'CONTAINER' AND fs.subject = :subject
            """;

    private final Timeline timeline;
    private final JdbcClient jdbc;

    ContainerReading(Timeline timeline, JdbcClient jdbc) {
        this.timeline = timeline;
        this.jdbc = jdbc;
    }

    /** The numbers of the lots that were filled into it, in the order of their filling. */
    List<String> lots(long container, long cutoff) {
        return jdbc.sql("""
                        SELECT l.number FROM materials.container_filling f JOIN materials.lot l ON l.id = f.lot
                        WHERE f.container = :container AND %s GROUP BY l.number ORDER BY min(f.filled_at), l.number
                        """.formatted(Known.at("f.entry")))
                .param("container", container)
                .param("cutoff", cutoff)
                .query((row, number) -> row.getString(1))
                .list();
    }

    Paged<Told> timeline(long container, @Nullable Integer page, long cutoff) {
        return timeline.told(TOLD, container, page, cutoff);
    }

    List<Told> all(long container, long cutoff) {
        return timeline.allTold(TOLD, container, cutoff);
    }
}
