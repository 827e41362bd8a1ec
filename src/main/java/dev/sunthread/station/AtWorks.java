package dev.sunthread.station;

import dev.sunthread.station.work.Prompts;
import dev.sunthread.station.work.StationLoads;
import dev.sunthread.station.work.Work;
import dev.sunthread.station.work.Works;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.stream.Stream;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Reads what the page at a station shows to a person. */
@Service
public class AtWorks {

    private final Works works;
    private final TakenScans scans;
    private final Prompts prompts;
    private final StationLoads loads;
    private final Remainders remainders;
    private final Clock clock;

    AtWorks(Works works, TakenScans scans, Prompts prompts, StationLoads loads, Remainders remainders, Clock clock) {
        this.works = works;
        this.scans = scans;
        this.prompts = prompts;
        this.loads = loads;
        this.remainders = remainders;
        this.clock = clock;
    }

    @Transactional
    public AtWork at(String station, String person) {
        Work work = works.of(station, person);
        Prompts.Prompt prompt = prompts.of(work, station, OffsetDateTime.now(clock));
        List<Remaining> loaded = loads.at(station).stream().map(remainders::of).toList();
        return new AtWork(
                station,
                scans.last(station, person).map(TakenScans.Last::verdict).orElse(null),
                prompt.inHand(),
                prompt.next(),
                prompt.commands(),
                Stream.concat(work.carriers().stream(), work.units().stream().map(unit -> unit.serial()))
                        .toList(),
                loaded,
                loaded.stream().filter(one -> one.hold() != null).toList(),
                prompt.cautions(),
                prompt.onlineOnly());
    }
}
