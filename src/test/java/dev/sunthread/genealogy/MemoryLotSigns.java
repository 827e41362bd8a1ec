package dev.sunthread.genealogy;

import dev.sunthread.genealogy.records.LotSpan;
import dev.sunthread.genealogy.walk.Moment;
import dev.sunthread.kernel.TraceRef;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** The first and the last sign of each lot that was said, and its end. */
final class MemoryLotSigns {

    private final Remembered remembered;
    private final Map<TraceRef, long[]> signs = new HashMap<>();
    private final Map<TraceRef, Long> ends = new HashMap<>();
    private final Set<TraceRef> made = new HashSet<>();
    private final Map<TraceRef, Long> removed = new HashMap<>();

    MemoryLotSigns(Remembered remembered) {
        this.remembered = remembered;
        remembered.lotsEverNamed().forEach(this::known);
        for (String kind : new String[] {"receipt", "blend", "recovery", "charge", "discharge", "container", "split"}) {
            remembered.of(kind).filter(one -> one.textOrNull("lot") != null).forEach(one -> sign(one.text("lot"), one));
        }
        for (String kind : new String[] {"discharge", "merge", "relabel", "regrade"}) {
            remembered
                    .of(kind)
                    .filter(one -> one.textOrNull("into") != null)
                    .forEach(one -> sign(one.text("into"), one));
        }
        remembered
                .of("removal")
                .filter(one -> one.map("child").get("lot") != null)
                .forEach(one -> removed.merge(
                        remembered.lot(Objects.requireNonNull(one.map("child").get("lot"))), one.instant(), Math::min));
        learnOrigins();
        Stream.of("relabel", "regrade").flatMap(remembered::of).forEach(one -> sign(one.text("lot"), one));
        remembered
                .of("merge")
                .forEach(one -> Remembered.texts(one.body(), "lots").forEach(lot -> sign(lot, one)));
        remembered
                .of("split")
                .forEach(one -> Remembered.list(one, "into").forEach(share -> sign(share.get("lot"), one)));
        remembered
                .of("blend")
                .forEach(one -> Remembered.list(one, "components").forEach(part -> sign(part.get("lot"), one)));
        remembered.of("installation").forEach(one -> sign(one.map("child").get("lot"), one));
        remembered
                .of("step")
                .forEach(one -> Remembered.list(one, "uses")
                        .forEach(use -> sign(
                                use.get("lot"),
                                Said.micros(Objects.requireNonNullElse(one.momentOrNull("startedAt"), one.at())))));
        remembered.of("lot-ending").forEach(one -> {
            sign(one.text("lot"), one);
            ends.merge(remembered.lot(one.text("lot")), one.instant(), Math::max);
        });
    }

    private void learnOrigins() {
        Stream.of("receipt", "blend", "recovery")
                .flatMap(remembered::of)
                .filter(one -> !isOnTop(one))
                .forEach(one -> made.add(remembered.lot(one.text("lot"))));
        Stream.of("merge", "relabel", "regrade", "discharge")
                .flatMap(remembered::of)
                .filter(one -> one.textOrNull("into") != null)
                .forEach(one -> made.add(remembered.lot(one.text("into"))));
        remembered
                .of("split")
                .forEach(one -> Remembered.list(one, "into")
                        .forEach(share -> made.add(remembered.lot(Objects.requireNonNull(share.get("lot"))))));
    }

    private boolean isOnTop(Said one) {
        String lot = one.text("lot");
        return "top-up".equals(one.textOrNull("way"))
                && Remembered.list(one, "components").stream()
                                .map(part -> part.get("lot"))
                                .filter(part -> !lot.equals(part))
                                .distinct()
                                .count()
                        < 2;
    }

    private void sign(@Nullable Object lot, Said one) {
        sign(lot, one.instant());
    }

    private void sign(@Nullable Object lot, long at) {
        if (lot != null) {
            long[] span = known(remembered.lot(lot));
            span[0] = Math.min(span[0], at);
            span[1] = Math.max(span[1], at);
        }
    }

    private long[] known(TraceRef lot) {
        return signs.computeIfAbsent(lot, any -> new long[] {Long.MAX_VALUE, Long.MIN_VALUE});
    }

    Set<TraceRef> lots() {
        return signs.keySet();
    }

    /** Whether something is known of the lot and nothing tells where it came from. */
    boolean isUnmade(TraceRef lot) {
        return !made.contains(lot) && firstOrRemoved(lot) != Long.MAX_VALUE;
    }

    Moment first(TraceRef lot) {
        return remembered.told(null, firstOrRemoved(lot));
    }

    private long firstOrRemoved(TraceRef lot) {
        long first = signs.getOrDefault(lot, new long[] {Long.MAX_VALUE})[0];
        return Math.min(first, removed.getOrDefault(lot, Long.MAX_VALUE));
    }

    /** Every lot of which there is a sign, if only that a part of it was taken out. */
    Set<TraceRef> lotsOrRemoved() {
        Set<TraceRef> all = new HashSet<>(signs.keySet());
        all.addAll(removed.keySet());
        return all;
    }

    /** From the first sign, if it is recorded where the lot came from, to the end, which a later sign speaks against. */
    LotSpan span(TraceRef lot, @Nullable Long item) {
        long[] span = Objects.requireNonNull(signs.get(lot));
        long first = made.contains(lot) ? remembered.told(null, span[0]).early() : Long.MIN_VALUE;
        long end = ends.getOrDefault(lot, Long.MAX_VALUE);
        boolean ended = end != Long.MAX_VALUE && span[1] <= end;
        return new LotSpan(
                lot.id(), item, first, ended ? remembered.told(null, end).late() : Long.MAX_VALUE);
    }
}
