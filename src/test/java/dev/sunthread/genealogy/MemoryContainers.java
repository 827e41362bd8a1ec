package dev.sunthread.genealogy;

import dev.sunthread.genealogy.records.Making;
import dev.sunthread.genealogy.records.Unfilled;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** Containers that were said to be used, loaded or divided, and what was said to be filled into them. */
final class MemoryContainers {

    private record Sign(
            TraceRef container,
            @Nullable TraceRef lot,
            @Nullable Long item,
            Said said) {}

    private final Remembered remembered;
    private final MemoryItems items;
    private final List<Sign> fillings = new ArrayList<>();
    private final List<Sign> uses = new ArrayList<>();
    private final List<Sign> others = new ArrayList<>();

    MemoryContainers(Remembered remembered, MemoryItems items) {
        this.remembered = remembered;
        this.items = items;
        remembered
                .of("container")
                .forEach(one -> Remembered.list(one, "containers")
                        .forEach(filled -> fillings.add(
                                sign(Map.of("container", filled.get("label"), "lot", one.text("lot")), one))));
        remembered.of("step").forEach(one -> Remembered.list(one, "uses").forEach(use -> learn(use, one, uses)));
        Stream.of("charge", "split").flatMap(remembered::of).forEach(one -> learn(one.body(), one, others));
        remembered
                .of("blend")
                .forEach(one -> Remembered.list(one, "components").forEach(part -> learn(part, one, others)));
    }

    private void learn(Map<String, Object> named, Said one, List<Sign> signs) {
        if (named.get("container") != null) {
            signs.add(sign(named, one));
        }
    }

    private Sign sign(Map<String, Object> named, Said one) {
        Object item = named.get("item");
        return new Sign(
                remembered.numbers().node(TraceKind.CONTAINER, String.valueOf(named.get("container"))),
                named.get("lot") == null ? null : remembered.lot(String.valueOf(named.get("lot"))),
                item == null ? null : remembered.numbers().item((String) item),
                one);
    }

    /** What containers were named with and not filled with before, of uses only for those that were never filled. */
    List<Making> labelled() {
        return Stream.concat(uses.stream().filter(this::isUnfilled), others.stream())
                .filter(sign -> sign.lot() != null && fillings.stream().noneMatch(filling -> gives(filling, sign)))
                .collect(Collectors.groupingBy(sign -> List.of(Objects.requireNonNull(sign.lot()), sign.container())))
                .entrySet()
                .stream()
                .map(pair -> Making.labelled(
                        0, pair.getKey().get(0).id(), pair.getKey().get(1), last(pair.getValue())))
                .toList();
    }

    private boolean isUnfilled(Sign sign) {
        return fillings.stream().noneMatch(filling -> filling.container().equals(sign.container()));
    }

    private static boolean gives(Sign filling, Sign sign) {
        return filling.container().equals(sign.container())
                && Objects.equals(filling.lot(), sign.lot())
                && filling.said().instant() <= sign.said().instant();
    }

    private Moment last(List<Sign> signs) {
        return remembered.told(
                null,
                signs.stream().mapToLong(sign -> sign.said().instant()).max().orElseThrow());
    }

    List<Unfilled> unfilled() {
        Map<TraceRef, List<Sign>> byContainer = Stream.concat(uses.stream(), others.stream())
                .filter(this::isUnfilled)
                .collect(Collectors.groupingBy(Sign::container, TreeMap::new, Collectors.toList()));
        return byContainer.entrySet().stream()
                .map(one -> new Unfilled(one.getKey().id(), itemsOf(one.getValue()), last(one.getValue())))
                .toList();
    }

    private Set<Long> itemsOf(List<Sign> signs) {
        Set<Long> all = new HashSet<>();
        signs.forEach(sign -> {
            if (sign.item() != null) {
                all.add(sign.item());
            } else if (sign.lot() != null) {
                all.addAll(items.of(sign.lot()));
            }
        });
        return all;
    }
}
