package dev.sunthread.station.work;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What the operation in hand still wants before it is complete.
 *
 * @param step the operation
 * @param open the empty positions of the unit in which it puts something
 * @param missing for each item that is neither scanned nor loaded at the station, the numbers accepted for it
 * @param supplied what is loaded at the station that it draws from, by the position
 */
record Want(Step step, List<Place> open, List<Set<String>> missing, Map<String, String> supplied) {

    boolean isNothing() {
        return open.isEmpty() && missing.isEmpty();
    }

    Optional<Place> placeFor(String item) {
        return open.stream().filter(place -> place.items().contains(item)).findFirst();
    }

    boolean takes(String item) {
        return step.consumes().stream().anyMatch(accepted -> accepted.contains(item));
    }

    /** The positions of a unit in which an operation puts something. */
    static Stream<Place> places(Step step, Collection<Place> all) {
        return all.stream().filter(place -> step.consumes().stream()
                .anyMatch(accepted -> !Collections.disjoint(accepted, place.items())));
    }

    static boolean hasAPlace(Set<String> accepted, Collection<Place> all) {
        return all.stream().anyMatch(place -> !Collections.disjoint(accepted, place.items()));
    }

}
