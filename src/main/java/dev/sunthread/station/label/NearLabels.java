package dev.sunthread.station.label;

import dev.sunthread.kernel.UnitId;
import dev.sunthread.production.UnitName;
import dev.sunthread.scan.Likeness;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Finds what is called nearly as a scanned text, whatever it is easily taken for; a person chooses, it is never taken. */
@Repository
public class NearLabels {

    private static final int MOST = 8;

    private static final String NAMES = """
            SELECT name FROM (
              SELECT 1 AS nth, u.serial AS name FROM production.unit u WHERE %s
              UNION SELECT 2, l.number FROM materials.lot l WHERE %s
              UNION SELECT 3, c.label FROM materials.container c WHERE %s
              UNION SELECT 4, k.code FROM production.carrier k WHERE %s
              UNION SELECT 5, q.code FROM catalog.equipment q WHERE %s
              UNION SELECT 6, p.code FROM catalog.position p JOIN catalog.station s ON s.id = p.station
                WHERE s.code = :station AND %s) x
            WHERE name <> ALL (:texts) GROUP BY name ORDER BY min(nth), name LIMIT %d
            """.formatted(
                    Likeness.condition("u.serial"),
                    Likeness.condition("l.number"),
                    Likeness.condition("c.label"),
                    Likeness.condition("k.code"),
                    Likeness.condition("q.code"),
                    Likeness.condition("p.code"),
                    MOST);

    private static final String UNITS = """
            SELECT i.number, u.serial, u.issuer FROM production.unit u JOIN catalog.item i ON i.id = u.item
            WHERE %s AND i.number = :item AND u.serial <> :serial ORDER BY u.serial, u.issuer LIMIT %d
            """.formatted(Likeness.condition("u.serial"), MOST);

    private final RecordedLabels labels;
    private final JdbcClient jdbc;

    NearLabels(RecordedLabels labels, JdbcClient jdbc) {
        this.labels = labels;
        this.jdbc = jdbc;
    }

    /** What a text that names nothing may have been meant for, as known at a station. */
    public List<Label> of(String text, String station) {
        return jdbc
                .sql(NAMES)
                .param("texts", Likeness.spellings(text).toArray(String[]::new))
                .param("station", station)
                .query(String.class)
                .list()
                .stream()
                .flatMap(name -> labels.called(name, station).stream())
                .distinct()
                .limit(MOST)
                .toList();
    }

    /** The units of an item for which a new serial of it is easily taken. */
    public List<Label> of(UnitName unit) {
        return jdbc.sql(UNITS)
                .param("texts", new String[] {unit.serial()})
                .param("item", unit.item())
                .param("serial", unit.serial())
                .query((row, number) -> (Label) new Label.OfUnit(
                        UnitName.of(UnitId.of(row.getString(3), row.getString(1), row.getString(2))), false))
                .list();
    }
}
