package dev.sunthread.database;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Duration;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import org.springframework.jdbc.datasource.lookup.AbstractRoutingDataSource;

/** Gives each part of the application a connection out of its own pool. A pool is empty until its part asks first. */
final class PartedSource extends AbstractRoutingDataSource implements AutoCloseable {

    private static final Duration GRACE = Duration.ofSeconds(10);

    private final Map<Bulkhead, HikariDataSource> pools = new EnumMap<>(Bulkhead.class);

    /** {@code first} is how every pool reaches the database; it becomes the pool of the pages. */
    PartedSource(HikariDataSource first, Pools sizes) {
        for (Bulkhead part : Bulkhead.values()) {
            HikariDataSource pool = part == Bulkhead.PAGES ? first : like(first);
            size(pool, part, sizes.of(part));
            pools.put(part, pool);
        }
        setTargetDataSources(Map.copyOf(pools));
        setDefaultTargetDataSource(first);
        afterPropertiesSet();
    }

    private static HikariDataSource like(HikariDataSource first) {
        HikariDataSource pool = new HikariDataSource();
        first.copyStateTo(pool);
        return pool;
    }

    private static void size(HikariDataSource pool, Bulkhead part, Pools.Pool size) {
        pool.setPoolName(part.name().toLowerCase(Locale.ROOT));
        pool.setMaximumPoolSize(size.connections());
        if (part != Bulkhead.PAGES) {
            // what a part does not use now is left to others
            pool.setMinimumIdle(0);
        }
        if (!size.statementTimeout().isZero()) {
            pool.setConnectionInitSql(
                    "SET statement_timeout = " + size.statementTimeout().toMillis());
            giveUpOnAServerThatHangs(pool, size.statementTimeout().plus(GRACE));
        }
    }

    // the server ends a statement in time itself, unless it no longer does anything
    private static void giveUpOnAServerThatHangs(HikariDataSource pool, Duration longest) {
        String url = pool.getJdbcUrl();
        if (url != null) {
            pool.setJdbcUrl(url + (url.contains("?") ? "&" : "?") + "socketTimeout=" + longest.toSeconds());
        }
    }

    @Override
    protected Object determineCurrentLookupKey() {
        return Bulkhead.entered();
    }

    @Override
    public void close() {
        pools.values().forEach(HikariDataSource::close);
    }
}
