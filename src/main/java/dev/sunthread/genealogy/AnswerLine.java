package dev.sunthread.genealogy;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * One unit, lot, container or run of an answer.
 *
 * @param kind {@code UNIT}, {@code LOT}, {@code CONTAINER}, {@code CURE_RUN} or {@code TEST_RUN}
 * @param level the unit's level, or what else it is in small letters
 * @param name the serial or the lot number
 * @param issuer who issued the serial; absent for lots
 * @param ever its class if any path ever led to it; the other three are absent if none does at that time
 * @param reason the shortest reason, in words
 * @param path every step of the path behind the reason, in words
 * @param place where it is, at the cut-off
 * @param within the level of the unit that it is inside of now; absent if it is in none
 * @param spot where its outermost unit was seen last, the place alone; absent for what is no unit
 * @param holds why it may not move on
 * @param shipments every shipment it was in while affected, with its class then
 */
public record AnswerLine(
        String kind,
        String level,
        String item,
        String name,
        @Nullable String issuer,
        Certainty ever,
        @Nullable Certainty now,
        @Nullable Certainty atShipment,
        @Nullable Certainty at,
        String reason,
        List<String> path,
        String place,
        @Nullable String within,
        @Nullable String spot,
        List<String> holds,
        List<String> shipments) {

    private static final Pattern BY_LINE = Pattern.compile("by kept line ([^\\s,;]+)");

    /** The kept lines that its reason and path name, by the ids of the entries that keep them. */
    public List<String> keptLines() {
        return Stream.concat(Stream.of(reason), path.stream())
                .flatMap(text -> BY_LINE.matcher(text).results())
                .map(found -> found.group(1))
                .distinct()
                .toList();
    }
}
