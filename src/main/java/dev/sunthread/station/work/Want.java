package dev.sunthread.station.work;

import dev.sunthread.catalog.Item;
import dev.sunthread.catalog.RouteStep;
import dev.sunthread.catalog.StructurePlace;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the operation in hand still wants before it is complete.
 *
 * @param step the operation
 * @param open the empty positions of the unit in which it puts something
 * @param missing what it takes in that is neither scanned nor loaded at the station
 * @param supplied what is loaded at the station that it draws from, by the position
 */
record Want(RouteStep step, List<StructurePlace> open, List<RouteStep.Consumed> missing, Map<String, String> supplied) {

    boolean isNothing() {
        return open.isEmpty() && missing.isEmpty();
    }

    Optional<StructurePlace> placeFor(String item) {
        return open.stream()
                .filter(place ->
                        place.items().stream().anyMatch(one -> one.number().equals(item)))
                .findFirst();
    }

    boolean takes(String item) {
        return step.consumes().stream().anyMatch(consumed -> accepts(consumed, item));
    }

    static boolean accepts(RouteStep.Consumed consumed, String item) {
        return consumed.choices().map(Item::number).anyMatch(item::equals);
    }

    /** Whether what is taken in goes into this position. */
    static boolean fits(RouteStep.Consumed consumed, StructurePlace place) {
        return consumed.choices().anyMatch(item -> place.items().contains(item));
    }
}
