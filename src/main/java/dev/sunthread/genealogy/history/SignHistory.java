package dev.sunthread.genealogy.history;

import dev.sunthread.genealogy.demand.UnitDemand;
import dev.sunthread.genealogy.line.LineDoubts;
import dev.sunthread.genealogy.records.LineRecords;
import dev.sunthread.genealogy.records.SignRecords;
import dev.sunthread.genealogy.records.UnitSigns;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.ledger.Known;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Reads the signs that units give of themselves, as known at a cut-off. */
public final class SignHistory implements SignRecords {

    private static final String SIGNS = """
            SELECT u.id, u.item, (
              SELECT array_agg(b.station ORDER BY b.entry) FROM production.birth b WHERE b.unit = u.id AND %1$s), (
              SELECT array_agg(%2$s ORDER BY b.entry) FROM production.birth b WHERE b.unit = u.id AND %1$s), (
              SELECT array_agg(%3$s) FROM production.shipment_unit s JOIN production.shipment h USING (entry)
              WHERE s.unit = u.id AND %4$s), (
              SELECT array_agg(b.at) FROM (
                SELECT %5$s AS at FROM production.unit_return r WHERE r.unit = u.id AND %6$s
                UNION ALL
                SELECT %3$s FROM production.shipment_unit s JOIN production.shipment h USING (entry)
                WHERE s.unit = u.id AND h.entry = ANY (:takenBack)) b), (
              SELECT array_agg(%7$s) FROM production.scrapping x
              WHERE x.unit = u.id AND %8$s AND x.entry <> ALL (:takenBack))
            FROM production.unit u WHERE %%s
            """.formatted(
                    Known.at("b.entry"),
                    Sql.micros("b.born_at"),
                    Sql.micros("h.shipped_at"),
                    Known.at("h.entry"),
                    Sql.micros("r.returned_at"),
                    Known.at("r.entry"),
                    Sql.micros("x.scrapped_at"),
                    Known.at("x.entry"));

    /**
     * Leaves out those that one installation, which nothing contradicts or ends, had put away before the window. What
     * is withdrawn counts as contradicting here, so that a few more are looked at. Written as NOT EXISTS, the planner, which
     * takes those for one row, may compare every unit with every one of them.
     */
    private static final String MAYBE_FREE = """
            WITH %s,
            away AS (%s AND i.installed_at < :before
              AND i.child_unit IN (SELECT c.id FROM production.unit c WHERE c.item = ANY (:ids)))
            SELECT u.id FROM production.unit u
            CROSS JOIN line
            WHERE u.item = ANY (:ids) AND u.id NOT IN (SELECT a.child FROM away a)
              AND (u.named_by < line.first_unknown OR %s)
            """.formatted(SurelyKnown.LINE, SurelyKnown.LASTING, Known.named("u"));

    private final JdbcClient jdbc;
    private final long cutoff;
    private final Clocks clocks;
    private final DoubtfulPlaces doubtful;
    private final LackHistory lacks;
    private final LineRecords lines;
    private final Map<Long, Boolean> bornAgain = new HashMap<>();

    public SignHistory(JdbcClient jdbc, long cutoff, Clocks clocks, LineRecords lines) {
        this.lines = lines;
        this.jdbc = jdbc;
        this.cutoff = cutoff;
        this.clocks = clocks;
        this.doubtful = new DoubtfulPlaces(jdbc, lines);
        this.lacks = new LackHistory(jdbc, cutoff, doubtful);
    }

    @Override
    public List<UnitSigns> of(Collection<Long> units) {
        return jdbc.sql(SIGNS.formatted("u.id = ANY (:ids)"))
                .param("ids", Sql.ids(units))
                .param("takenBack", Sql.ids(LineDoubts.takenBack(lines.open())))
                .param("cutoff", cutoff)
                .query((row, number) -> signs(row))
                .list();
    }

    @Override
    public List<UnitSigns> thatMayHaveBeenFree(Collection<Long> items, Moment window) {
        if (noneIsOf(items)) {
            return List.of();
        }
        List<Long> units = jdbc.sql(MAYBE_FREE)
                .params(doubtful.params())
                .param("ids", Sql.ids(items))
                .param("before", clocks.surelyBefore(window.early()))
                .param("cutoff", cutoff)
                .query((row, number) -> row.getLong(1))
                .list();
        return units.isEmpty()
                ? List.of()
                : of(units).stream()
                        .filter(signs -> signs.first() <= window.late())
                        .toList();
    }

    @Override
    public List<UnitSigns> thereBy(long instant) {
        return jdbc
                .sql(SIGNS.formatted(Known.named("u")))
                .param("takenBack", Sql.ids(LineDoubts.takenBack(lines.open())))
                .param("cutoff", cutoff)
                .query((row, number) -> signs(row))
                .list()
                .stream()
                .filter(signs -> signs.first() <= instant)
                .toList();
    }

    // what is tracked by lot has no units, and most that is lacking is
    private boolean noneIsOf(Collection<Long> items) {
        return jdbc.sql("SELECT u.id FROM production.unit u WHERE u.item = ANY (:ids) LIMIT 1")
                .param("ids", Sql.ids(items))
                .query((row, number) -> row.getLong(1))
                .list()
                .isEmpty();
    }

    @Override
    public Set<Long> thatMayLack(Collection<UnitDemand> demands) {
        return lacks.unitsThatMayLack(demands);
    }

    @Override
    public Set<Long> bornAgain(Collection<Long> units) {
        Long[] missing = units.stream()
                .filter(unit -> !bornAgain.containsKey(unit))
                .distinct()
                .toArray(Long[]::new);
        if (missing.length > 0) {
            Arrays.stream(missing).forEach(unit -> bornAgain.put(unit, false));
            jdbc.sql("""
                            SELECT b.unit FROM production.birth b WHERE b.unit = ANY (:ids) AND %s
                            GROUP BY b.unit HAVING count(*) > count(b.station) AND count(*) > 1
                              OR min(b.station) <> max(b.station)
                              OR extract(epoch FROM max(b.born_at) - min(b.born_at)) * 1000000 > :moment
                              OR b.unit = ANY (:bornByLines)
                            """.formatted(Known.at("b.entry")))
                    .param("moment", Moment.TOLD_TWICE)
                    .param("ids", missing)
                    .param("bornByLines", Sql.ids(LineDoubts.born(lines.open())))
                    .param("cutoff", cutoff)
                    .query(row -> {
                        bornAgain.put(row.getLong(1), true);
                    });
        }
        Set<Long> twice = new HashSet<>(units);
        twice.removeIf(unit -> !bornAgain.getOrDefault(unit, false));
        return twice;
    }

    private UnitSigns signs(ResultSet row) throws SQLException {
        Long[] stations = array(row, 3);
        Long[] births = array(row, 4);
        long first = Long.MAX_VALUE;
        for (int i = 0; i < births.length; i++) {
            first = Math.min(first, clocks.told(stations[i], births[i]).early());
        }
        return LineDoubts.of(
                new UnitSigns(
                        row.getLong(1),
                        row.getLong(2),
                        births.length == 0 ? Long.MIN_VALUE : first,
                        moments(row, 5),
                        moments(row, 6),
                        moments(row, 7)),
                lines.open());
    }

    private List<Moment> moments(ResultSet row, int column) throws SQLException {
        return Arrays.stream(array(row, column))
                .map(instant -> clocks.told(null, instant))
                .toList();
    }

    private static Long[] array(ResultSet row, int column) throws SQLException {
        var array = row.getArray(column);
        return array == null ? new Long[0] : (Long[]) array.getArray();
    }
}
