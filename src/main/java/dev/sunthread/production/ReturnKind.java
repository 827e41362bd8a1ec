package dev.sunthread.production;

import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Field;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Units came back from a consignee. */
@Component
class ReturnKind implements Kind<ReturnKind.Body> {

    record Body(
            @Field("Who sent them back") String consignee,

            @Field(value = "The units that came back", atLeast = 1)
            List<UnitName> units) {}

    private final Units units;
    private final JdbcClient jdbc;

    ReturnKind(Units units, JdbcClient jdbc) {
        this.units = units;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "return";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "Units came back from a consignee, with all that is inside them.";
    }

    @Override
    public void record(Fact<Body> fact) {
        List<Long> returned = units.known(fact.body().units(), "body.units");
        jdbc.sql("INSERT INTO production.unit_return (entry, unit, consignee, returned_at) SELECT ?, unnest(?), ?, ?")
                .params(fact.entry(), returned.toArray(Long[]::new))
                .params(fact.body().consignee(), fact.occurredAt())
                .update();
    }
}
