package dev.sunthread.web.home;

import dev.sunthread.web.station.StationContact;
import java.util.List;
import java.util.Map;

/**
 * What the start page shows: what waits for a person, what is in the plant, and what happened last.
 *
 * @param held how many things of each kind are on hold
 * @param expired how many lots and opened containers are past their time; {@code expireSoon} are so within seven days
 * @param behind the stations whose last recorded happening is the oldest
 * @param stations how many stations there are
 */
public record StartPage(
        long openFindings,
        long openLines,
        Map<String, Long> held,
        long expired,
        long expireSoon,
        long waitingLots,
        List<LevelCount> inProcess,
        List<StationContact> behind,
        long stations,
        List<Happening> latest) {

    /** How many things of a kind are on hold. */
    public long held(String kind) {
        return held.getOrDefault(kind, 0L);
    }
}
