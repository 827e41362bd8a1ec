package dev.sunthread.database;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.boot.autoconfigure.AutoConfigurations;
import org.springframework.boot.flyway.autoconfigure.FlywayAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.DataSourceAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.JdbcClientAutoConfiguration;
import org.springframework.boot.jdbc.autoconfigure.JdbcTemplateAutoConfiguration;
import org.springframework.boot.test.context.runner.ApplicationContextRunner;
import org.springframework.jdbc.core.simple.JdbcClient;

class DatabaseConfigurationTests {

    @TempDir
    Path parent;

    @Test
    void givesTheApplicationItsOwnDurableDatabaseWhenNoUrlIsSet() {
        context("").run(context -> {
            assertThat(context).hasSingleBean(EmbeddedServer.class);
            assertThat(ask(context.getBean(JdbcClient.class), "SHOW fsync")).isEqualTo("on");
            assertThat(ask(context.getBean(JdbcClient.class), "SELECT to_regclass('flyway_schema_history')::text"))
                    .isEqualTo("flyway_schema_history");
        });
        assertThat(parent.resolve("postgres/cluster/postmaster.pid")).doesNotExist();
    }

    @Test
    void startsNothingWhenAUrlIsSet() {
        context("jdbc:postgresql://db.invalid/sunthread")
                .withPropertyValues("spring.flyway.enabled=false")
                .run(context -> assertThat(context).doesNotHaveBean(EmbeddedServer.class));
        assertThat(parent.resolve("postgres")).doesNotExist();
    }

    private ApplicationContextRunner context(String url) {
        return new ApplicationContextRunner()
                .withUserConfiguration(DatabaseConfiguration.class)
                .withConfiguration(AutoConfigurations.of(
                        DataSourceAutoConfiguration.class,
                        JdbcTemplateAutoConfiguration.class,
                        JdbcClientAutoConfiguration.class,
                        FlywayAutoConfiguration.class))
                .withPropertyValues(
                        "spring.datasource.url=" + url, "sunthread.database.directory=" + parent.resolve("postgres"));
    }

    private static String ask(JdbcClient database, String sql) {
        return database.sql(sql).query(String.class).single();
    }
}
