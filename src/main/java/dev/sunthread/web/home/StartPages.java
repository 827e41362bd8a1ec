package dev.sunthread.web.home;

import dev.sunthread.inbox.Findings;
import dev.sunthread.inbox.Lines;
import dev.sunthread.web.station.StationContact;
import dev.sunthread.web.station.StationContacts;
import java.util.List;
import org.springframework.stereotype.Service;

/** Gathers the start page at a cut-off. */
@Service
class StartPages {

    private static final int MOST_BEHIND = 5;

    private final Findings findings;
    private final Lines lines;
    private final StationContacts stations;
    private final PlantCounts plant;
    private final Latest latest;

    StartPages(Findings findings, Lines lines, StationContacts stations, PlantCounts plant, Latest latest) {
        this.findings = findings;
        this.lines = lines;
        this.stations = stations;
        this.plant = plant;
        this.latest = latest;
    }

    StartPage read(long cutoff) {
        List<ExpiringThing> expiring = plant.expiring(cutoff);
        long expired = expiring.stream().filter(ExpiringThing::expired).count();
        List<StationContact> contacts = stations.oldestFirst(cutoff);
        return new StartPage(
                findings.count(cutoff),
                lines.count(cutoff),
                plant.held(cutoff),
                expired,
                expiring.size() - expired,
                plant.waitingLots(cutoff),
                plant.inProcess(cutoff),
                contacts.stream().limit(MOST_BEHIND).toList(),
                contacts.size(),
                latest.at(cutoff));
    }
}
