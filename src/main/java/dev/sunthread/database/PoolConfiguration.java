package dev.sunthread.database;

import com.zaxxer.hikari.HikariDataSource;
import javax.sql.DataSource;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.boot.context.properties.bind.Bindable;
import org.springframework.boot.context.properties.bind.Binder;
import org.springframework.boot.health.contributor.HealthIndicator;
import org.springframework.boot.jdbc.autoconfigure.DataSourceProperties;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.boot.jdbc.health.DataSourceHealthIndicator;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.env.Environment;

/** Makes the pools of connections to the embedded server, or to the one that {@code spring.datasource} names. */
@Configuration(proxyBeanMethods = false)
@EnableConfigurationProperties(Pools.class)
class PoolConfiguration {

    @Bean
    DataSource dataSource(
            DataSourceProperties given,
            ObjectProvider<JdbcConnectionDetails> embedded,
            Pools sizes,
            Environment environment) {
        HikariDataSource first = new HikariDataSource();
        JdbcConnectionDetails server = embedded.getIfAvailable();
        first.setJdbcUrl(server == null ? given.determineUrl() : server.getJdbcUrl());
        first.setUsername(server == null ? given.determineUsername() : server.getUsername());
        first.setPassword(server == null ? given.determinePassword() : server.getPassword());
        Binder.get(environment).bind("spring.datasource.hikari", Bindable.ofInstance(first));
        return new PartedSource(first, sizes);
    }

    /** Looks at the database as the pages see it; left alone, every pool would be waited for in turn. */
    @Bean
    HealthIndicator dbHealthIndicator(DataSource source) {
        return new DataSourceHealthIndicator(source);
    }
}
