package dev.sunthread.cure.judging;

import dev.sunthread.catalog.FoundError;
import dev.sunthread.catalog.judging.Judge;
import dev.sunthread.cure.light.Lamp;
import dev.sunthread.cure.light.RadiometerReading;
import java.sql.Array;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads the raw data of cure runs, many at once. */
@Repository
public class RawRuns {

    private static final String SERIES = """
            SELECT entry, sensor, position, quantity, unit_of_measure, seconds::float8[], readings::float8[]
            FROM cure.series WHERE entry = ANY (?) ORDER BY entry, ordinal
            """;

    /** With the radiometer's readings next to each run of equipment that has any. */
    private static final String RUNS = """
            SELECT r.entry, extract(epoch FROM r.ended_at - r.started_at) AS seconds,
                   coalesce(b.band, a.band) AS band, b.lamp_hours, b.irradiance,
                   extract(epoch FROM r.started_at - bc.checked_at) / 3600 AS since, a.irradiance AS next,
                   extract(epoch FROM ac.checked_at - r.ended_at) / 3600 AS until
            FROM unnest(cast(:entries AS bigint[]), cast(:before AS bigint[]), cast(:after AS bigint[]))
              AS n (entry, before, after)
            JOIN cure.run_record r USING (entry)
            LEFT JOIN catalog.check_radiometer b ON b.entry = n.before
            LEFT JOIN catalog.equipment_check bc ON bc.entry = n.before
            LEFT JOIN catalog.check_radiometer a ON a.entry = n.after
            LEFT JOIN catalog.equipment_check ac ON ac.entry = n.after
            """;

    private final JdbcClient jdbc;

    RawRuns(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The raw data of the runs of these cases, with the radiometer's readings that each names. */
    public Map<Long, RawRun> of(Collection<Judge.Case> cases) {
        Long[] asked = numbers(cases, Judge.Case::entry);
        Map<Long, List<RawRun.RawSeries>> series = new HashMap<>();
        jdbc.sql(SERIES).param(asked).query((ResultSet row) -> {
            series.computeIfAbsent(row.getLong(1), entry -> new ArrayList<>()).add(series(row));
        });
        Map<Long, RawRun> runs = new HashMap<>();
        JdbcClient.StatementSpec runsWithLamps = jdbc.sql(RUNS)
                .param("entries", asked)
                .param("before", numbers(cases, Judge.Case::before))
                .param("after", numbers(cases, Judge.Case::after));
        runsWithLamps.query((ResultSet row) -> {
            long entry = row.getLong("entry");
            runs.put(
                    entry,
                    new RawRun(entry, row.getDouble("seconds"), series.getOrDefault(entry, List.of()), lamp(row)));
        });
        return runs;
    }

    private static Long[] numbers(Collection<Judge.Case> cases, Function<Judge.Case, Long> number) {
        return cases.stream().map(number).toArray(Long[]::new);
    }

    private static RawRun.RawSeries series(ResultSet row) throws SQLException {
        return new RawRun.RawSeries(
                row.getString(2),
                row.getString(3),
                FoundError.Quantity.valueOf(row.getString(4)),
                row.getString(5),
                numbers(row.getArray(6)),
                numbers(row.getArray(7)));
    }

    private static double[] numbers(Array array) throws SQLException {
        return Stream.of((Double[]) array.getArray())
                .mapToDouble(Double::doubleValue)
                .toArray();
    }

    private static Lamp lamp(ResultSet row) throws SQLException {
        Lamp lamp = new Lamp(
                row.getString("band"),
                number(row, "lamp_hours"),
                reading(number(row, "since"), number(row, "irradiance")),
                reading(number(row, "until"), number(row, "next")));
        return lamp.equals(Lamp.UNKNOWN) ? Lamp.UNKNOWN : lamp;
    }

    private static @Nullable Double number(ResultSet row, String column) throws SQLException {
        double number = row.getDouble(column);
        return row.wasNull() ? null : number;
    }

    private static @Nullable RadiometerReading reading(@Nullable Double hours, @Nullable Double irradiance) {
        return hours == null || irradiance == null ? null : new RadiometerReading(hours, irradiance);
    }
}
