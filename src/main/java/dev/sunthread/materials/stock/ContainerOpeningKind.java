package dev.sunthread.materials.stock;

import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.materials.ContainerAges;
import dev.sunthread.materials.Containers;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** A container was opened. */
@Component
class ContainerOpeningKind implements Kind<ContainerOpeningKind.Body> {

    record Body(@Field("The container's label") String container) {}

    private final Containers containers;
    private final ContainerAges ages;
    private final JdbcClient jdbc;

    ContainerOpeningKind(Containers containers, ContainerAges ages, JdbcClient jdbc) {
        this.containers = containers;
        this.ages = ages;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "container-opening";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A container was opened.";
    }

    @Override
    public void record(Fact<Body> fact) {
        long container = containers.filled(fact, fact.body().container());
        jdbc.sql("INSERT INTO materials.container_opening (entry, container, opened_at) VALUES (?, ?, ?)")
                .params(fact.entry(), container, fact.occurredAt())
                .update();
        ages.changed(container);
    }
}
