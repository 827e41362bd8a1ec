package dev.sunthread.genealogy;

import dev.sunthread.kernel.TraceRef;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/** The items of lots as they were said: what is made of a lot is of its item as it was known when that was said. */
final class MemoryItems {

    private record Origin(String id, TraceRef lot, long item) {}

    private final Remembered remembered;
    private final List<Origin> origins = new ArrayList<>();
    private final Map<String, Said> meant = new HashMap<>();

    MemoryItems(Remembered remembered) {
        this.remembered = remembered;
        remembered.everSaid().forEach(this::learn);
    }

    /** Every item that a lot is recorded as. */
    Set<Long> of(TraceRef lot) {
        Set<Long> items = new TreeSet<>();
        origins.stream().filter(origin -> origin.lot().equals(lot)).forEach(origin -> items.add(origin.item()));
        return items;
    }

    Set<Long> all() {
        Set<Long> all = new TreeSet<>();
        origins.forEach(origin -> all.add(origin.item()));
        return all;
    }

    private void learn(Said one) {
        String target = one.target();
        if (target != null) {
            origins.removeIf(origin -> origin.id().equals(target));
        }
        Said told = one.kind().equals("correction")
                ? new Said(one.id(), Objects.requireNonNull(meant.get(target)).kind(), one.at(), one.map("body"))
                : one;
        meant.put(one.id(), told);
        switch (told.kind()) {
            case "receipt", "blend", "recovery" -> learn(told, told.text("lot"), stated(told));
            case "split" ->
                Remembered.list(told, "into")
                        .forEach(share -> learn(
                                told, (String) Objects.requireNonNull(share.get("lot")), known(told.text("lot"))));
            case "merge" -> learn(told, told.text("into"), ofAll(Remembered.texts(told.body(), "lots")));
            case "regrade" -> learn(told, told.text("into"), stated(told));
            case "relabel", "discharge" -> {
                if (told.textOrNull("into") != null && told.textOrNull("lot") != null) {
                    learn(told, told.text("into"), known(told.text("lot")));
                }
            }
            default -> {}
        }
    }

    private @Nullable Long stated(Said told) {
        return told.textOrNull("item") == null ? null : remembered.numbers().item(told.text("item"));
    }

    private void learn(Said told, String lot, @Nullable Long item) {
        if (item != null) {
            origins.add(new Origin(told.id(), remembered.lot(lot), item));
        }
    }

    private @Nullable Long known(String number) {
        TraceRef lot = remembered.lot(number);
        Long last = null;
        for (Origin origin : origins) {
            if (origin.lot().equals(lot)) {
                last = origin.item();
            }
        }
        return last;
    }

    private @Nullable Long ofAll(List<String> lots) {
        Long first = lots.isEmpty() ? null : known(lots.get(0));
        return lots.stream().allMatch(lot -> Objects.equals(known(lot), first)) ? first : null;
    }
}
