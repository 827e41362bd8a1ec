package dev.sunthread.cure;

import java.math.BigDecimal;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What sensors measured during cure runs, kept reading by reading. */
@Repository
class Profiles {

    private final JdbcClient jdbc;

    Profiles(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void record(long entry, List<Series> profile) {
        int ordinal = 0;
        for (Series series : profile) {
            jdbc.sql("""
                            INSERT INTO cure.series
                              (entry, ordinal, sensor, position, quantity, unit_of_measure, seconds, readings)
                            VALUES (?, ?, ?, ?, ?, ?, cast(? AS numeric[]), cast(? AS numeric[]))
                            """)
                    .params(entry, ++ordinal, series.sensor())
                    .param(series.position())
                    .params(series.quantity().name(), series.unitOfMeasure())
                    .params(digits(series.seconds()), digits(series.readings()))
                    .update();
        }
    }

    private static String[] digits(List<BigDecimal> numbers) {
        return numbers.stream().map(BigDecimal::toPlainString).toArray(String[]::new);
    }
}
