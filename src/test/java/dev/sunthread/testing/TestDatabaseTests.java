package dev.sunthread.testing;

import static org.assertj.core.api.Assertions.assertThat;

import javax.sql.DataSource;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

class TestDatabaseTests {

    @Test
    void isMigrated() {
        assertThat(tableExists(TestDatabase.fresh(), "flyway_schema_history")).isTrue();
    }

    @Test
    void sharesNothingWithAnotherOne() {
        DataSource one = TestDatabase.fresh();
        DataSource other = TestDatabase.fresh();
        JdbcClient.create(one).sql("CREATE TABLE mark ()").update();

        assertThat(tableExists(one, "mark")).isTrue();
        assertThat(tableExists(other, "mark")).isFalse();
    }

    static boolean tableExists(DataSource database, String table) {
        return JdbcClient.create(database)
                .sql("SELECT to_regclass(?) IS NOT NULL")
                .param(table)
                .query(Boolean.class)
                .single();
    }
}
