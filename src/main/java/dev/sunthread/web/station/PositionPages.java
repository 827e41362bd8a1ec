package dev.sunthread.web.station;

import dev.sunthread.ledger.Known;
import dev.sunthread.materials.Charges;
import dev.sunthread.web.Paged;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads what history tells of a position at a cut-off. */
@Repository
class PositionPages {

    /** The items that the position {@code p} takes by the last revision of its station; null for any. */
    static final String TAKES = """
            SELECT string_agg(i.number, ', ' ORDER BY i.number) FROM catalog.position_item q
            JOIN catalog.item i ON i.id = q.item WHERE q.position = p.id AND q.entry = (
              SELECT v.entry FROM catalog.station_revision v WHERE v.station = p.station AND %s
              ORDER BY v.effective_at DESC, v.entry DESC LIMIT 1)
            """.formatted(Known.at("v.entry"));

    private static final String TAKEN = "SELECT (" + TAKES + ") FROM catalog.position p WHERE p.id = :position";

    private static final int CHARGES_A_PAGE = 20;

    private static final String CHARGES = """
            FROM (%s) c JOIN materials.lot l ON l.id = c.lot LEFT JOIN materials.container k ON k.id = c.container
            JOIN ledger.entry e ON e.number = c.entry WHERE c.position = :position
            """.formatted(Charges.KNOWN);

    private static final String LIMITS = """
            SELECT o.uses, o.evidence, v.revision, v.effective_at AS "from"
            FROM catalog.position_carry_over o JOIN catalog.station_revision v USING (entry)
            WHERE o.position = :position AND %s ORDER BY v.effective_at DESC, v.entry DESC
            """.formatted(Known.at("v.entry"));

    private static final String CLEAN_POINTS = """
            SELECT n.cleaned_at AS at, n.evidence, e.actor, e.id AS entry
            FROM materials.clean_point n JOIN ledger.entry e ON e.number = n.entry
            WHERE n.position = :position AND %s ORDER BY n.cleaned_at DESC, n.entry DESC
            """.formatted(Known.at("n.entry"));

    private static final String MIXES_BACK = """
            SELECT EXISTS (SELECT FROM catalog.position_mixing_back m WHERE m.position = :position AND m.entry = (
              SELECT v.entry FROM catalog.station_revision v JOIN catalog.position p ON p.station = v.station
              WHERE p.id = :position AND %s ORDER BY v.effective_at DESC, v.entry DESC LIMIT 1))
            """.formatted(Known.at("v.entry"));

    private final Steps steps;
    private final Clock clock;
    private final JdbcClient jdbc;

    PositionPages(Steps steps, Clock clock, JdbcClient jdbc) {
        this.steps = steps;
        this.clock = clock;
        this.jdbc = jdbc;
    }

    Optional<Long> find(String station, String code) {
        return jdbc.sql("""
                        SELECT p.id FROM catalog.position p JOIN catalog.station st ON st.id = p.station
                        WHERE st.code = ? AND p.code = ?
                        """).params(station, code).query(Long.class).optional();
    }

    PositionPage read(
            long position,
            String station,
            String code,
            @Nullable Integer chargePage,
            @Nullable Integer stepPage,
            long cutoff) {
        long total = about("SELECT count(*) " + CHARGES, position, cutoff)
                .query(Long.class)
                .single();
        Paged<PositionPage.Charge> charges =
                Paged.of(chargePage, CHARGES_A_PAGE, total, (offset, most) -> charges(position, cutoff, offset, most));
        List<PositionPage.Clean> cleanPoints = cleanPoints(position, cutoff);
        return new PositionPage(
                station,
                code,
                about(TAKEN, position, cutoff)
                        .query((row, number) -> Optional.ofNullable(row.getString(1)))
                        .single()
                        .orElse(null),
                about(MIXES_BACK, position, cutoff).query(Boolean.class).single(),
                about(LIMITS, position, cutoff)
                        .query(DataClassRowMapper.newInstance(PositionPage.Limit.class))
                        .list(),
                charges,
                ChargePicture.of(charges.rows(), cleanPoints, OffsetDateTime.now(clock)),
                cleanPoints,
                steps.fromPosition(position, stepPage, cutoff));
    }

    List<PositionPage.Charge> everyCharge(long position, long cutoff) {
        return charges(position, cutoff, 0, Integer.MAX_VALUE);
    }

    List<StationPage.Step> everyStep(long position, long cutoff) {
        return steps.allFromPosition(position, cutoff);
    }

    private List<PositionPage.Charge> charges(long position, long cutoff, long offset, int most) {
        return about(
                        "SELECT l.number AS lot, k.label AS container, c.charged_at AS \"from\", c.until, e.actor, e.id AS entry "
                                + CHARGES + " ORDER BY c.charged_at DESC, c.entry DESC LIMIT :most OFFSET :offset",
                        position,
                        cutoff)
                .param("most", most)
                .param("offset", offset)
                .query(DataClassRowMapper.newInstance(PositionPage.Charge.class))
                .list();
    }

    private List<PositionPage.Clean> cleanPoints(long position, long cutoff) {
        return about(CLEAN_POINTS, position, cutoff)
                .query(DataClassRowMapper.newInstance(PositionPage.Clean.class))
                .list();
    }

    private JdbcClient.StatementSpec about(String sql, long position, long cutoff) {
        return jdbc.sql(sql).param("position", position).param("cutoff", cutoff);
    }
}
