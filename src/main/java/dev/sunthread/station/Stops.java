package dev.sunthread.station;

import dev.sunthread.station.work.StationLoads;
import java.util.List;
import org.springframework.stereotype.Service;

/** Material on hold that is still loaded somewhere: stations show what to take off until a scan says that it was. */
@Service
public class Stops {

    /** Something on hold at a position, and why it must come off. */
    public record Stop(String station, String position, String lot, String reason) {}

    private final StationLoads loads;

    Stops(StationLoads loads) {
        this.loads = loads;
    }

    /** Everything that nobody has confirmed to have taken off, by station and position. */
    public List<Stop> unconfirmed() {
        return loads.stops();
    }

    /** A word that changes whenever what must come off at a station does. */
    public String markOf(String station) {
        return Integer.toHexString(loads.at(station).stream()
                .filter(loaded -> loaded.hold() != null)
                .toList()
                .hashCode());
    }
}
