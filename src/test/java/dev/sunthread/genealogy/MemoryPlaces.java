package dev.sunthread.genealogy;

import dev.sunthread.kernel.TraceRef;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What was at which position, and goes into which place, as it was said. */
final class MemoryPlaces {

    private final Remembered remembered;
    private final MemoryItems items;

    MemoryPlaces(Remembered remembered, MemoryItems items) {
        this.remembered = remembered;
        this.items = items;
    }

    /** Items of what else was at the positions of a lot, or goes into its places. */
    Set<Long> itemsOf(TraceRef lot) {
        Set<Object> charged = remembered
                .of("charge")
                .filter(one -> remembered.lot(one.text("lot")).equals(lot))
                .map(one -> place(one.text("station"), one.text("position")))
                .collect(Collectors.toSet());
        Set<Long> found = itemsAt(charged);
        remembered
                .of("installation")
                .filter(one -> one.map("child").get("lot") != null
                        && remembered
                                .lot(Objects.requireNonNull(one.map("child").get("lot")))
                                .equals(lot))
                .flatMap(one -> fitting(one.map("parent").get("item"), one.textOrNull("position")))
                .forEach(found::add);
        return found;
    }

    /** Items of what was at positions that mix. */
    Set<Long> itemsMixed() {
        return itemsAt(remembered
                .of("station")
                .flatMap(station -> Remembered.texts(station.body(), "mixingBack").stream()
                        .map(position -> place(station.text("station"), position)))
                .collect(Collectors.toSet()));
    }

    private Set<Long> itemsAt(Set<Object> places) {
        Set<Long> found = new HashSet<>();
        remembered
                .of("charge")
                .filter(one -> places.contains(place(one.text("station"), one.text("position"))))
                .forEach(one -> found.addAll(items.of(remembered.lot(one.text("lot")))));
        remembered
                .of("step")
                .forEach(step -> Remembered.list(step, "uses").stream()
                        .filter(use -> places.contains(place(step.text("station"), use.get("position"))))
                        .map(use -> item(Objects.requireNonNull(use.get("item"))))
                        .forEach(found::add));
        return found;
    }

    private Stream<Long> fitting(@Nullable Object parent, @Nullable Object position) {
        return remembered
                .of("structure")
                .filter(one -> one.text("item").equals(parent))
                .flatMap(one -> one.maps("positions").stream())
                .filter(one -> Objects.equals(one.get("position"), position))
                .flatMap(one -> Remembered.texts(one, "items").stream())
                .map(this::item);
    }

    private long item(Object number) {
        return remembered.numbers().item((String) number);
    }

    private static Object place(Object station, @Nullable Object position) {
        return List.of(station, String.valueOf(position));
    }
}
