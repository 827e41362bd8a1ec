package dev.sunthread.web.station;

import dev.sunthread.ledger.Known;
import dev.sunthread.materials.Charges;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads what history tells of a station at a cut-off. */
@Repository
class StationPages {

    private static final String REVISIONS = """
            SELECT v.revision, v.name, v.clock_uncertainty, v.effective_at AS "from" FROM catalog.station_revision v
            WHERE v.station = :station AND %s ORDER BY v.effective_at DESC, v.entry DESC
            """.formatted(Known.at("v.entry"));

    private static final String POSITIONS = """
            SELECT p.code, (%s) AS takes, l.number AS lot, c.charged_at AS since
            FROM catalog.position p LEFT JOIN (%s) c ON c.position = p.id AND c.until IS NULL
            LEFT JOIN materials.lot l ON l.id = c.lot WHERE p.station = :station ORDER BY p.code, c.charged_at
            """.formatted(PositionPages.TAKES, Charges.KNOWN);

    private static final String EQUIPMENT = """
            SELECT q.code, x.name FROM catalog.equipment q CROSS JOIN LATERAL (
              SELECT v.station, v.name FROM catalog.equipment_revision v WHERE v.equipment = q.id AND %s
              ORDER BY v.effective_at DESC, v.entry DESC LIMIT 1) x
            WHERE x.station = :station ORDER BY q.code
            """.formatted(Known.at("v.entry"));

    private final StationContacts contacts;
    private final Steps steps;
    private final JdbcClient jdbc;

    StationPages(StationContacts contacts, Steps steps, JdbcClient jdbc) {
        this.contacts = contacts;
        this.steps = steps;
        this.jdbc = jdbc;
    }

    Optional<Long> find(String code) {
        return jdbc.sql("SELECT id FROM catalog.station WHERE code = ?")
                .param(code)
                .query(Long.class)
                .optional();
    }

    StationPage read(long station, String code, @Nullable Integer page, long cutoff) {
        return new StationPage(
                contacts.of(code, cutoff).get(0),
                list(REVISIONS, station, cutoff, StationPage.Revision.class),
                list(POSITIONS, station, cutoff, StationPage.Position.class),
                list(EQUIPMENT, station, cutoff, StationPage.Equipment.class),
                steps.atStation(station, page, cutoff));
    }

    List<StationPage.Step> everyStep(long station, long cutoff) {
        return steps.allAtStation(station, cutoff);
    }

    private <T> List<T> list(String sql, long station, long cutoff, Class<T> type) {
        return jdbc.sql(sql)
                .param("station", station)
                .param("cutoff", cutoff)
                .query(DataClassRowMapper.newInstance(type))
                .list();
    }
}
