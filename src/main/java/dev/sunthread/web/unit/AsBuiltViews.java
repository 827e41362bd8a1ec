package dev.sunthread.web.unit;

import dev.sunthread.kernel.UnitId;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** Shows a unit as built now, at one of its shipments, or with all that ever was in it, and where records are missing. */
@Service
class AsBuiltViews {

    private final Contents contents;
    private final ReleasedPlaces places;
    private final Clock clock;

    AsBuiltViews(Contents contents, ReleasedPlaces places, Clock clock) {
        this.contents = contents;
        this.places = places;
        this.clock = clock;
    }

    /** The unit at the shipment that the view names, or ever; now if it names neither. */
    AsBuilt of(long unit, UnitId id, @Nullable String view, List<Shipped> shipments, long cutoff) {
        List<Inside> ever = contents.of(unit, cutoff);
        if (AsBuilt.EVER.equals(view)) {
            return built(AsBuilt.EVER, null, id, ever, cutoff);
        }
        return shipments.stream()
                .filter(shipment -> shipment.number().equals(view))
                .findFirst()
                .map(shipment -> built(shipment.number(), shipment.at(), id, then(ever, shipment.at()), cutoff))
                .orElseGet(() -> built(AsBuilt.NOW, OffsetDateTime.now(clock), id, now(ever), cutoff));
    }

    private AsBuilt built(String view, @Nullable OffsetDateTime at, UnitId id, List<Inside> parts, long cutoff) {
        Set<String> items = new HashSet<>(Set.of(id.item()));
        collect(parts, items);
        var structures = places.of(items, at == null ? OffsetDateTime.now(clock) : at, cutoff);
        List<Inside> withGaps = withGaps(id.item(), parts, structures);
        return new AsBuilt(view, at, withGaps, gaps(withGaps));
    }

    private static void collect(List<Inside> parts, Set<String> items) {
        parts.forEach(part -> {
            if (part.unit() != null) {
                items.add(part.unit().item());
            }
            collect(part.contents(), items);
        });
    }

    private static List<Inside> now(List<Inside> parts) {
        return parts.stream()
                .filter(Inside::now)
                .map(part -> part.with(now(part.contents())))
                .toList();
    }

    private static List<Inside> then(List<Inside> parts, OffsetDateTime at) {
        return parts.stream()
                .filter(part -> part.wasThere(at))
                .map(part -> part.with(then(part.contents(), at)))
                .toList();
    }

    private static List<Inside> withGaps(String item, List<Inside> parts, Map<String, Map<String, String>> structures) {
        Map<String, String> missing = new TreeMap<>(structures.getOrDefault(item, Map.of()));
        parts.forEach(part -> missing.remove(part.position()));
        List<Inside> all = new ArrayList<>();
        parts.forEach(part -> all.add(
                part.unit() == null ? part : part.with(withGaps(part.unit().item(), part.contents(), structures))));
        missing.forEach((position, expected) -> all.add(Inside.gap(position, expected)));
        return all;
    }

    private static long gaps(List<Inside> parts) {
        return all(parts).filter(Inside::isGap).count();
    }

    private static Stream<Inside> all(List<Inside> parts) {
        return parts.stream().flatMap(part -> Stream.concat(Stream.of(part), all(part.contents())));
    }

    /** Every part at every depth with the path of positions to it, as the table of the view has it. */
    static List<Map.Entry<String, Inside>> paths(List<Inside> parts) {
        return paths("", parts).toList();
    }

    private static Stream<Map.Entry<String, Inside>> paths(String above, List<Inside> parts) {
        return parts.stream().flatMap(part -> {
            String path = above.isEmpty() ? part.position() : above + " / " + part.position();
            return Stream.concat(Stream.of(Map.entry(path, part)), paths(path, part.contents()));
        });
    }
}
