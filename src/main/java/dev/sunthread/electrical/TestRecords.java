package dev.sunthread.electrical;

import dev.sunthread.kernel.Digits;
import dev.sunthread.ledger.Fact;
import java.time.OffsetDateTime;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** What came out of tests, with the raw points of their sweeps. */
@Repository
class TestRecords {

    private final JdbcClient jdbc;

    TestRecords(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void record(Fact<TestRunKind.Body> fact, Tested tested, OffsetDateTime start) {
        jdbc.sql("""
                        INSERT INTO electrical.run_record
                          (entry, run, unit, specification, equipment, started_at, ended_at, verdict)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(fact.entry(), tested.run(), tested.unit(), tested.specification(), tested.equipment())
                .params(start, fact.occurredAt(), fact.body().verdict().name())
                .update();
        int ordinal = 0;
        for (Sweep sweep : fact.body().sweeps()) {
            record(fact.entry(), ++ordinal, sweep);
        }
        for (SafetyReading reading : fact.body().readings()) {
            jdbc.sql("INSERT INTO electrical.safety_reading (entry, ordinal, path, volts, amperes, seconds)"
                            + " VALUES (?, ?, ?, ?, ?, ?)")
                    .params(fact.entry(), ++ordinal, reading.path().name())
                    .params(reading.volts(), reading.amperes(), reading.seconds())
                    .update();
        }
    }

    private void record(long entry, int ordinal, Sweep sweep) {
        jdbc.sql("""
                        INSERT INTO electrical.sweep
                          (entry, ordinal, name, irradiance, cell_temperature, volts, amperes)
                        VALUES (?, ?, ?, ?, ?, cast(? AS numeric[]), cast(? AS numeric[]))
                        """)
                .params(entry, ordinal, sweep.name())
                .param(sweep.irradiance())
                .param(sweep.cellTemperature())
                .params(Digits.of(sweep.volts()), Digits.of(sweep.amperes()))
                .update();
    }
}
