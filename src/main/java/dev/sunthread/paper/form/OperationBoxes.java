package dev.sunthread.paper.form;

import dev.sunthread.catalog.Item;
import dev.sunthread.catalog.ProcessLimits;
import dev.sunthread.catalog.RouteStep;
import dev.sunthread.catalog.StructurePlace;
import dev.sunthread.catalog.Structures;
import dev.sunthread.paper.form.Box.Holds;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;

/** The boxes that an operation needs: the unit, every part and material that it takes in, every value that is measured. */
@Component
class OperationBoxes {

    private final Structures structures;
    private final ProcessLimits limits;

    OperationBoxes(Structures structures, ProcessLimits limits) {
        this.structures = structures;
        this.limits = limits;
    }

    List<Box> of(Item item, RouteStep step, OffsetDateTime at) {
        List<Box> boxes = new ArrayList<>();
        boxes.add(Box.needed("unit", Holds.UNIT, "paper.box.unit", item.number()));
        List<StructurePlace> places = structures.placesOf(item.id(), at);
        for (StructurePlace place : places) {
            if (place.items().stream().anyMatch(part -> step.takesIn(part.id()))) {
                boxes.add(Box.needed(
                        "part." + place.position(),
                        Holds.PART,
                        "paper.box.part",
                        place.position(),
                        numbers(place.items().stream())));
            }
        }
        for (RouteStep.Consumed consumed : step.consumes()) {
            if (places.stream().noneMatch(place -> goesThere(consumed, place))) {
                String numbers = numbers(consumed.choices());
                String name = consumed.item().number();
                boxes.add(Box.needed("use." + name, Holds.MATERIAL, "paper.box.use", numbers));
                boxes.add(Box.optional("from." + name, Holds.POSITION, "paper.box.from", numbers));
            }
        }
        limits.of(item.id(), step.operation(), at)
                .forEach(value -> boxes.add(Box.optional(
                        "value." + value.value(),
                        Holds.VALUE,
                        "paper.box.value",
                        value.value(),
                        value.unitOfMeasure())));
        return boxes;
    }

    private static boolean goesThere(RouteStep.Consumed consumed, StructurePlace place) {
        return consumed.choices().anyMatch(choice -> place.items().contains(choice));
    }

    private static String numbers(Stream<Item> items) {
        return items.map(Item::number).distinct().collect(Collectors.joining(" / "));
    }
}
