package dev.sunthread.materials.stock;

import dev.sunthread.ledger.Fact;
import dev.sunthread.ledger.Kind;
import dev.sunthread.ledger.body.Contradiction;
import dev.sunthread.ledger.body.Field;
import dev.sunthread.materials.Containers;
import dev.sunthread.materials.LotRules;
import dev.sunthread.materials.Quantities;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Containers were filled from a lot. */
@Component
class ContainerKind implements Kind<ContainerKind.Body> {

    record Body(
            @Field("The lot they were filled from") String lot,

            @Field(value = "The containers", atLeast = 1, atMost = 1000)
            List<Filling> containers) {

        Body {
            if (containers.stream().map(Filling::label).distinct().count() < containers.size()) {
                throw new Contradiction("containers", "names a container twice", "Name each container once");
            }
        }
    }

    /** One container with what it got. */
    record Filling(
            @Field("The container's label") String label,

            @Field(value = "How much it got", positive = true) @Nullable
            BigDecimal quantity,

            @Field("The unit of the quantity, as the lot's item has it") @Nullable
            String unitOfMeasure) {

        Filling {
            Quantities.standTogether(quantity, unitOfMeasure);
        }
    }

    private final LotRules rules;
    private final Containers containers;
    private final JdbcClient jdbc;

    ContainerKind(LotRules rules, Containers containers, JdbcClient jdbc) {
        this.rules = rules;
        this.containers = containers;
        this.jdbc = jdbc;
    }

    @Override
    public String name() {
        return "container";
    }

    @Override
    public Class<Body> body() {
        return Body.class;
    }

    @Override
    public String meaning() {
        return "Containers got content of a lot; one that held another lot before holds a mix from then on.";
    }

    @Override
    public void record(Fact<Body> fact) {
        String number = fact.body().lot();
        long lot = rules.taken(fact, number);
        for (Filling filling : fact.body().containers()) {
            rules.quantityIsInTheLotsUnit(fact, number, lot, filling.unitOfMeasure());
            jdbc.sql("""
                            INSERT INTO materials.container_filling
                              (entry, container, lot, quantity, unit_of_measure, filled_at)
                            VALUES (?, ?, ?, ?, ?, ?)
                            """)
                    .params(fact.entry(), containers.known(filling.label()), lot)
                    .param(filling.quantity())
                    .param(filling.unitOfMeasure())
                    .param(fact.occurredAt())
                    .update();
        }
    }
}
