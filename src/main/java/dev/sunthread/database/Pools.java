package dev.sunthread.database;

import java.time.Duration;
import org.springframework.boot.context.properties.ConfigurationProperties;

/** How many connections each part may hold, and how long one statement of it may take; without end at nought. */
@ConfigurationProperties("sunthread.database.pools")
record Pools(Pool pages, Pool stations, Pool traces, Pool files, Pool imports) {

    record Pool(int connections, Duration statementTimeout) {}

    Pool of(Bulkhead part) {
        return switch (part) {
            case PAGES -> pages;
            case STATIONS -> stations;
            case TRACES -> traces;
            case FILES -> files;
            case IMPORTS -> imports;
        };
    }
}
