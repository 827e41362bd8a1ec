package dev.sunthread.materials.stock;

import dev.sunthread.materials.Containers;
import dev.sunthread.materials.LotRules;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Registers one kind for each act that is recorded of the stock of a lot. */
@Configuration(proxyBeanMethods = false)
class StockChangeKinds {

    private final LotRules rules;
    private final Containers containers;
    private final JdbcClient jdbc;

    StockChangeKinds(LotRules rules, Containers containers, JdbcClient jdbc) {
        this.rules = rules;
        this.containers = containers;
        this.jdbc = jdbc;
    }

    @Bean
    StockChangeKind countKind() {
        return kind(StockWay.COUNT);
    }

    @Bean
    StockChangeKind issueKind() {
        return kind(StockWay.ISSUE);
    }

    @Bean
    StockChangeKind stockReturnKind() {
        return kind(StockWay.STOCK_RETURN);
    }

    @Bean
    StockChangeKind wasteKind() {
        return kind(StockWay.WASTE);
    }

    @Bean
    StockChangeKind sampleKind() {
        return kind(StockWay.SAMPLE);
    }

    private StockChangeKind kind(StockWay way) {
        return new StockChangeKind(way, rules, containers, jdbc);
    }
}
