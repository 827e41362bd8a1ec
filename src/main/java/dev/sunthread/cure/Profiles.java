package dev.sunthread.cure;

import dev.sunthread.kernel.Digits;
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
                    .params(Digits.of(series.seconds()), Digits.of(series.readings()))
                    .update();
        }
    }
}
