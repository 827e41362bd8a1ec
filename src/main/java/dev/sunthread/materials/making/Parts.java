package dev.sunthread.materials.making;

import dev.sunthread.ledger.Fact;
import dev.sunthread.materials.Containers;
import dev.sunthread.materials.LotPart;
import dev.sunthread.materials.LotRules;
import dev.sunthread.materials.Lots;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;

/** Looks up the lots that another is made of, with what is wrong about them noted or refused. */
@Component
class Parts {

    private final Lots lots;
    private final LotRules rules;
    private final Containers containers;

    Parts(Lots lots, LotRules rules, Containers containers) {
        this.lots = lots;
        this.rules = rules;
        this.containers = containers;
    }

    LotPart taken(Fact<?> fact, PartName name) {
        long lot = rules.madeInto(fact, name.lot());
        rules.quantityIsInTheLotsUnit(fact, name.lot(), lot, name.unitOfMeasure());
        return new LotPart(
                lot, containers.ofLot(fact, name.container(), name.lot(), lot), name.quantity(), name.unitOfMeasure());
    }

    List<LotPart> taken(Fact<?> fact, List<PartName> names) {
        return names.stream().map(name -> taken(fact, name)).toList();
    }

    void quantityIsInTheLotsUnit(Fact<?> fact, LotPart part, @Nullable String unitOfMeasure) {
        rules.quantityIsInTheLotsUnit(fact, lots.number(part.lot()), part.lot(), unitOfMeasure);
    }

    /** The one item that all parts are of; absent if they differ or nothing tells it of one. */
    @Nullable
    Long itemOf(List<LotPart> parts) {
        Set<Long> items =
                parts.stream().map(part -> lots.itemOf(part.lot()).orElse(0L)).collect(Collectors.toSet());
        return items.size() == 1 && !items.contains(0L) ? items.iterator().next() : null;
    }
}
