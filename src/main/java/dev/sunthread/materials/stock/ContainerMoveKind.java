package dev.sunthread.materials.stock;

import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.ledger.body.TextForm;
import dev.sunthread.materials.ContainerAges;
import dev.sunthread.materials.Containers;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** A container was put somewhere. */
@Component
class ContainerMoveKind implements Kind<ContainerMoveKind.Body> {

    record Body(
            @Field("The container's label") String container,

            @Field(value = "Where it was put", text = TextForm.NAME)
            String place,

            @Field("How warm it is kept there; time at room temperature is its out-time")
            Storage storage) {}

    private final Containers containers;
    private final ContainerAges ages;
    private final JdbcClient jdbc;

    ContainerMoveKind(Containers containers, ContainerAges ages, JdbcClient jdbc) {
        this.containers = containers;
        this.ages = ages;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "container-move";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "A container was put somewhere and stays there until its next move.";
    }

    @Override
    public void record(Fact<Body> fact) {
        Body body = fact.body();
        long container = containers.filled(fact, body.container());
        jdbc.sql("INSERT INTO materials.container_move (entry, container, place, storage, moved_at)"
                        + " VALUES (?, ?, ?, ?, ?)")
                .params(fact.entry(), container, body.place(), body.storage().name(), fact.occurredAt())
                .update();
        ages.changed(container);
    }
}
