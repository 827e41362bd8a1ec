package dev.sunthread.catalog;

import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * An operation of a released route with all that holds for it.
 *
 * @param sequence its place in the route, from 1
 * @param stations the codes of the stations where it may be done; any if empty
 * @param windows how long after earlier operations it may begin
 * @param qualified whether who does it must be qualified for it
 * @param onlineOnly whether it is not done while the station can't ask whether it may
 * @param unitAlone whether it acts on the named unit only, not on what is inside it or around it
 */
public record RouteStep(
        int sequence,
        String operation,
        String name,
        List<Consumed> consumes,
        List<Demand> demands,
        Set<String> stations,
        List<Window> windows,
        Set<Caution> cautions,
        boolean qualified,
        boolean onlineOnly,
        boolean unitAlone) {

    /** An item that is taken in, and those approved instead of it. */
    public record Consumed(Item item, List<Item> alternates) {

        /** The item and all approved instead of it, the item first. */
        public Stream<Item> choices() {
            return Stream.concat(Stream.of(item), alternates.stream());
        }
    }

    /**
     * How long after the end of an earlier operation it may begin.
     *
     * @param after the earlier operation
     */
    public record Window(
            String after,
            @Nullable Duration atLeast,
            @Nullable Duration atMost) {}

    /** Whether it may be done at the station of that code. */
    public boolean mayBeDoneAt(String station) {
        return stations.isEmpty() || stations.contains(station);
    }

    /** Whether it takes in that item, by itself or instead of another. */
    public boolean takesIn(long item) {
        return consumes.stream().flatMap(Consumed::choices).anyMatch(choice -> choice.id() == item);
    }
}
