package dev.sunthread.web.home;

import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Service;

/** Counts what is in the plant, from the lists that the counts lead to. */
@Service
class PlantCounts {

    private final HoldLists holds;
    private final ExpiringThings expiring;
    private final WaitingLots waiting;
    private final UnitsInProcess units;

    PlantCounts(HoldLists holds, ExpiringThings expiring, WaitingLots waiting, UnitsInProcess units) {
        this.holds = holds;
        this.expiring = expiring;
        this.waiting = waiting;
        this.units = units;
    }

    Map<String, Long> held(long cutoff) {
        return holds.things(cutoff);
    }

    List<ExpiringThing> expiring(long cutoff) {
        return expiring.at(cutoff);
    }

    long waitingLots(long cutoff) {
        return waiting.count(cutoff);
    }

    List<LevelCount> inProcess(long cutoff) {
        return units.levels(cutoff);
    }
}
