package dev.sunthread.web.station;

import dev.sunthread.ledger.Known;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/**
 * Tells of each station what was recorded of it last: a station that is long silent may keep what it has not sent. Steps,
 * charges, discharges, clean points and runs of its equipment count.
 */
@Repository
public class StationContacts {

    private static final String CONTACTS = """
            SELECT st.code AS station, coalesce((
                     SELECT v.name FROM catalog.station_revision v WHERE v.station = st.id AND %s
                     ORDER BY v.effective_at DESC, v.entry DESC LIMIT 1), '') AS name,
                   last.at AS last_at, last.told AS last_told
            FROM catalog.station st LEFT JOIN LATERAL (
              SELECT * FROM (
                (SELECT s.ended_at AS at, 'step ' || s.operation AS told FROM production.step s
                 WHERE s.station = st.id AND %s ORDER BY s.started_at DESC LIMIT 1)
                UNION ALL
                SELECT p.at, p.told FROM catalog.position q CROSS JOIN LATERAL (
                  (SELECT c.charged_at AS at, 'charge at position ' || q.code AS told FROM materials.charge c
                   WHERE c.position = q.id AND %s ORDER BY c.charged_at DESC LIMIT 1)
                  UNION ALL
                  (SELECT d.discharged_at, 'discharge at position ' || q.code FROM materials.discharge d
                   WHERE d.position = q.id AND %s ORDER BY d.discharged_at DESC LIMIT 1)
                  UNION ALL
                  (SELECT n.cleaned_at, 'clean point at position ' || q.code FROM materials.clean_point n
                   WHERE n.position = q.id AND %s ORDER BY n.cleaned_at DESC LIMIT 1)) p
                WHERE q.station = st.id
                UNION ALL
                SELECT r.at, r.told FROM (
                  SELECT DISTINCT ev.equipment FROM catalog.equipment_revision ev WHERE ev.station = st.id AND %s) e
                CROSS JOIN LATERAL (
                  (SELECT c.ended_at AS at, 'cure run ' || n.number AS told FROM cure.run_record c JOIN cure.run n ON n.id = c.run
                   WHERE c.equipment = e.equipment AND %s ORDER BY c.started_at DESC LIMIT 1)
                  UNION ALL
                  (SELECT t.ended_at, 'test run ' || n.number FROM electrical.run_record t JOIN electrical.run n ON n.id = t.run
                   WHERE t.equipment = e.equipment AND %s ORDER BY t.started_at DESC LIMIT 1)) r) every
              ORDER BY every.at DESC LIMIT 1) last ON true
            WHERE cast(:station AS text) IS NULL OR st.code = :station
            ORDER BY last.at NULLS FIRST, st.code
            """.formatted(
                    Known.at("v.entry"),
                    Known.at("s.entry"),
                    Known.at("c.entry"),
                    Known.at("d.entry"),
                    Known.at("n.entry"),
                    Known.at("ev.entry"),
                    Known.at("c.entry"),
                    Known.at("t.entry"));

    private final JdbcClient jdbc;

    StationContacts(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Every station: those of which nothing is recorded, then the longest silent first. */
    public List<StationContact> oldestFirst(long cutoff) {
        return read(null, cutoff);
    }

    List<StationContact> of(String station, long cutoff) {
        return read(station, cutoff);
    }

    private List<StationContact> read(@Nullable String station, long cutoff) {
        return jdbc.sql(CONTACTS)
                .param("station", station)
                .param("cutoff", cutoff)
                .query(DataClassRowMapper.newInstance(StationContact.class))
                .list();
    }
}
