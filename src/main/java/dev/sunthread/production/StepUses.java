package dev.sunthread.production;

import dev.sunthread.catalog.Item;
import dev.sunthread.catalog.Items;
import dev.sunthread.catalog.Stations;
import dev.sunthread.inbox.typed.TypedLabels;
import dev.sunthread.ledger.Fact;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Writes the material that steps took in. */
@Component
class StepUses {

    private final Items items;
    private final Stations stations;
    private final UseRules rules;
    private final UnscannedUses unscanned;
    private final TypedLabels typed;
    private final JdbcClient jdbc;

    StepUses(
            Items items,
            Stations stations,
            UseRules rules,
            UnscannedUses unscanned,
            TypedLabels typed,
            JdbcClient jdbc) {
        this.items = items;
        this.stations = stations;
        this.rules = rules;
        this.unscanned = unscanned;
        this.typed = typed;
        this.jdbc = jdbc;
    }

    /** Writes them, and gives each as the database knows it. */
    List<TakenInRules.Taken> record(Fact<StepKind.Body> fact) {
        List<StepUse> uses = fact.body().uses();
        List<TakenInRules.Taken> known = new ArrayList<>();
        for (int i = 0; i < uses.size(); i++) {
            known.add(known(fact, "body.uses[" + i + "]", uses.get(i)));
        }
        if (!uses.isEmpty()) {
            insert(fact.entry(), uses, known);
        }
        if (known.stream().anyMatch(TakenInRules.Taken::isUnscanned)) {
            unscanned.follow(fact.entry());
        }
        typed.name(fact, fact.body().station(), names(fact.body()));
        return known;
    }

    private static List<@Nullable String> names(StepKind.Body step) {
        return Stream.concat(
                        step.units().stream().map(UnitName::serial),
                        step.uses().stream().flatMap(use -> Stream.of(use.lot(), use.container())))
                .collect(Collectors.toList());
    }

    private TakenInRules.Taken known(Fact<StepKind.Body> fact, String path, StepUse use) {
        Item item = items.named(use.item(), path + ".item");
        Long position = use.position() == null
                ? null
                : stations.position(fact.body().station(), use.position(), path + ".position")
                        .id();
        Long lot = use.lot() == null ? null : rules.scanned(fact, use.lot(), position);
        return new TakenInRules.Taken(item, lot, rules.container(use.container()), position);
    }

    private void insert(long entry, List<StepUse> uses, List<TakenInRules.Taken> known) {
        jdbc.sql("""
                        INSERT INTO production.step_use
                          (entry, ordinal, item, lot, container, position, quantity, unit_of_measure)
                        SELECT ?, u.ordinal, u.item, u.lot, u.container, u.position, u.quantity, u.unit_of_measure
                        FROM unnest(cast(? AS bigint[]), cast(? AS bigint[]), cast(? AS bigint[]), cast(? AS bigint[]),
                            cast(? AS numeric[]), cast(? AS text[]))
                          WITH ORDINALITY AS u (item, lot, container, position, quantity, unit_of_measure, ordinal)
                        """)
                .param(entry)
                .param(known.stream().map(use -> use.item().id()).toArray(Long[]::new))
                .param(known.stream().map(TakenInRules.Taken::lot).toArray(Long[]::new))
                .param(known.stream().map(TakenInRules.Taken::container).toArray(Long[]::new))
                .param(known.stream().map(TakenInRules.Taken::position).toArray(Long[]::new))
                .param(uses.stream().map(StepUses::quantity).toArray(String[]::new))
                .param(uses.stream().map(StepUse::unitOfMeasure).toArray(String[]::new))
                .update();
    }

    private static @Nullable String quantity(StepUse use) {
        return use.quantity() == null ? null : use.quantity().toPlainString();
    }
}
