package dev.sunthread.station;

import dev.sunthread.catalog.Caution;
import dev.sunthread.station.label.Command;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What the page at a station shows.
 *
 * @param said what came of the last scan; absent before the first
 * @param inHand what is in hand
 * @param next what to scan next, the most urgent first
 * @param commands what can be told beside scanning
 * @param units the units in hand, or the carriers of a load
 * @param loaded what is loaded at the station's positions
 * @param stops what of that must come off
 * @param cautions what to beware of
 * @param onlineOnly whether what is in hand may not be done while the server is away
 */
public record AtWork(
        String station,
        @Nullable Verdict said,
        Say inHand,
        List<Say> next,
        List<Command> commands,
        List<String> units,
        List<Remaining> loaded,
        List<Remaining> stops,
        List<Caution> cautions,
        boolean onlineOnly) {}
