package dev.sunthread.electrical.judging;

import dev.sunthread.electrical.terms.RigError;
import dev.sunthread.electrical.terms.SafetyReading;
import dev.sunthread.electrical.terms.Swept;
import dev.sunthread.electrical.terms.Tested;
import dev.sunthread.electrical.translate.Conditions;
import java.math.BigDecimal;
import java.sql.Array;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads the raw data of test runs, many at once; a run without any is left out. */
@Repository
public class RawTests {

    private static final String SWEEPS = """
            SELECT entry, name, irradiance, cell_temperature, volts::float8[], amperes::float8[]
            FROM electrical.sweep WHERE entry = ANY (?) ORDER BY entry, ordinal
            """;

    private static final String READINGS = """
            SELECT entry, path, volts, amperes, seconds FROM electrical.safety_reading
            WHERE entry = ANY (?) ORDER BY entry, ordinal
            """;

    private final JdbcClient jdbc;

    RawTests(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** What was measured in the tests that these entries recorded. */
    public Map<Long, Tested> of(Collection<Long> entries) {
        Long[] asked = entries.toArray(Long[]::new);
        Map<Long, Tested> tests = new HashMap<>();
        jdbc.sql(SWEEPS).param(asked).query((ResultSet row) -> {
            test(tests, row).sweeps().add(swept(row));
        });
        jdbc.sql(READINGS).param(asked).query((ResultSet row) -> {
            boolean ground = row.getString(2).equals("GROUND");
            test(tests, row)
                    .readings()
                    .add(new SafetyReading(ground, row.getBigDecimal(3), row.getBigDecimal(4), row.getBigDecimal(5)));
        });
        return tests;
    }

    private static Tested test(Map<Long, Tested> tests, ResultSet row) throws SQLException {
        return tests.computeIfAbsent(
                row.getLong(1), entry -> new Tested(new ArrayList<>(), new ArrayList<>(), RigError.NONE));
    }

    private static Swept swept(ResultSet row) throws SQLException {
        return new Swept(
                row.getString(2), conditions(row), isDark(row), numbers(row.getArray(5)), numbers(row.getArray(6)));
    }

    /** Told so by its name, or by no irradiance. */
    private static boolean isDark(ResultSet row) throws SQLException {
        BigDecimal irradiance = row.getBigDecimal(3);
        return row.getString(2).equalsIgnoreCase("dark") || irradiance != null && irradiance.signum() == 0;
    }

    private static @Nullable Conditions conditions(ResultSet row) throws SQLException {
        double irradiance = row.getDouble(3);
        boolean told = !row.wasNull() && irradiance > 0;
        double celsius = row.getDouble(4);
        return told && !row.wasNull() ? new Conditions(irradiance, celsius) : null;
    }

    private static double[] numbers(Array array) throws SQLException {
        return Stream.of((Double[]) array.getArray())
                .mapToDouble(Double::doubleValue)
                .toArray();
    }
}
