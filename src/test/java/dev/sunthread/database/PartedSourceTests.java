package dev.sunthread.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.zaxxer.hikari.HikariDataSource;
import dev.sunthread.testing.TestDatabase;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.time.Duration;
import javax.sql.DataSource;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Each part of the application has connections of its own, with the time that its statements may take. */
class PartedSourceTests {

    private static final Pools.Pool ONE = new Pools.Pool(1, Duration.ofSeconds(7));
    private static final Pools SIZES = new Pools(ONE, ONE, ONE, ONE, ONE);

    private final PartedSource source = new PartedSource(first(TestDatabase.fresh()), SIZES);

    private static HikariDataSource first(DataSource database) {
        HikariDataSource first = new HikariDataSource();
        first.setDataSource(database);
        // the shortest that the pool knows
        first.setConnectionTimeout(250);
        return first;
    }

    @AfterEach
    void closed() {
        source.close();
    }

    @Test
    void onePartWithoutAConnectionLeavesTheOthersTheirs() throws SQLException {
        try (Bulkhead.Way back = Bulkhead.TRACES.enter();
                Connection trace = source.getConnection()) {
            assertThat(trace.isValid(1)).isTrue();
            assertThatThrownBy(source::getConnection).isInstanceOf(SQLTransientConnectionException.class);
            try (Bulkhead.Way toStations = Bulkhead.STATIONS.enter();
                    Connection station = source.getConnection()) {
                assertThat(station.isValid(1)).isTrue();
            }
        }
        try (Connection page = source.getConnection()) {
            assertThat(page.isValid(1)).isTrue();
        }
    }

    @Test
    void aStatementMayTakeAsLongAsItsPartAllows() throws SQLException {
        try (Connection page = source.getConnection();
                var shown = page.createStatement().executeQuery("SHOW statement_timeout")) {
            assertThat(shown.next()).isTrue();
            assertThat(shown.getString(1)).isEqualTo("7s");
        }
    }
}
