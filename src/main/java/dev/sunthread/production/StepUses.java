package dev.sunthread.production;

import dev.sunthread.catalog.Item;
import dev.sunthread.catalog.Items;
import dev.sunthread.catalog.Stations;
import dev.sunthread.ledger.Fact;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Writes the material that steps took in. */
@Component
class StepUses {

    private final Items items;
    private final Stations stations;
    private final UseRules rules;
    private final UnscannedUses unscanned;
    private final JdbcClient jdbc;

    StepUses(Items items, Stations stations, UseRules rules, UnscannedUses unscanned, JdbcClient jdbc) {
        this.items = items;
        this.stations = stations;
        this.rules = rules;
        this.unscanned = unscanned;
        this.jdbc = jdbc;
    }

    void record(Fact<StepKind.Body> fact) {
        for (int i = 0; i < fact.body().uses().size(); i++) {
            record(fact, i, fact.body().uses().get(i));
        }
        unscanned.follow(fact.entry());
    }

    private void record(Fact<StepKind.Body> fact, int index, StepUse use) {
        String path = "body.uses[" + index + "]";
        Item item = items.named(use.item(), path + ".item");
        Long position = use.position() == null
                ? null
                : stations.position(fact.body().station(), use.position(), path + ".position")
                        .id();
        Long lot = use.lot() == null ? null : rules.scanned(fact, use.lot(), position);
        jdbc.sql("""
                        INSERT INTO production.step_use
                          (entry, ordinal, item, lot, container, position, quantity, unit_of_measure)
                        VALUES (?, ?, ?, ?, ?, ?, ?, ?)
                        """)
                .params(fact.entry(), index + 1, item.id())
                .param(lot)
                .param(rules.container(use.container()))
                .param(position)
                .param(use.quantity())
                .param(use.unitOfMeasure())
                .update();
    }
}
