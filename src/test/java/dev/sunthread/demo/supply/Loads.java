package dev.sunthread.demo.supply;

import dev.sunthread.demo.floor.Floor;
import dev.sunthread.demo.told.Bodies;
import dev.sunthread.simulator.world.Loading;
import dev.sunthread.simulator.world.Place;
import dev.sunthread.simulator.world.Source;
import dev.sunthread.simulator.world.Work;
import java.time.OffsetDateTime;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** What is truly loaded at the positions of the line, and how each change of it is told. */
public final class Loads {

    private final Floor floor;
    private final Map<Place, TreeMap<OffsetDateTime, Source>> loaded = new HashMap<>();
    private final Map<Place, TreeMap<OffsetDateTime, Source>> leftBehind = new HashMap<>();

    public Loads(Floor floor) {
        this.floor = floor;
    }

    /** What units take in at a position: what is loaded there, and for a while what an unpurged change left behind. */
    public Taken take(String item, String station, String position, OffsetDateTime at, String quantity) {
        Place place = new Place(station, position);
        Work.Use truly = new Work.Use(item, at(place, at), place, carried(place, at));
        return Taken.of(truly, quantity, unitOf(item));
    }

    public Source at(Place place, OffsetDateTime at) {
        return Objects.requireNonNull(loaded.get(place), place.toString())
                .floorEntry(at)
                .getValue();
    }

    boolean isLoaded(Place place) {
        return loaded.containsKey(place);
    }

    private Set<Source> carried(Place place, OffsetDateTime at) {
        Set<Source> carried = new HashSet<>();
        leftBehind.getOrDefault(place, new TreeMap<>()).forEach((until, source) -> {
            if (at.isBefore(until) && at.isAfter(until.minusHours(3))) {
                carried.add(source);
            }
        });
        return carried;
    }

    private static String unitOf(String item) {
        return item.equals("EPX-1") ? "g" : Material.of(item).unitOfMeasure();
    }

    void trulyLoad(Place place, Source source, OffsetDateTime at) {
        loaded.computeIfAbsent(place, any -> new TreeMap<>()).put(at, source);
        floor.happens(new Loading.Charge(Floor.micros(at), place, source));
    }

    void trulyUnload(Place place, OffsetDateTime at) {
        floor.happens(new Loading.Discharge(Floor.micros(at), place, at(place, at), null, Set.of()));
    }

    void trulyPurge(Place place, OffsetDateTime at) {
        floor.happens(new Loading.Purge(Floor.micros(at), place));
    }

    /** What was there before goes along into what is taken in the first three hours after this. */
    void leavesBehind(Place place, OffsetDateTime change) {
        leftBehind
                .computeIfAbsent(place, any -> new TreeMap<>())
                .put(change.plusHours(3), at(place, change.minusSeconds(1)));
    }

    void tellLoaded(Place place, Source source, OffsetDateTime at) {
        floor.crew(place.station(), at)
                .tell(
                        at,
                        "charge",
                        "lot",
                        source.lot(),
                        "container",
                        Optional.ofNullable(source.container()),
                        "station",
                        place.station(),
                        "position",
                        place.position());
    }

    void tellUnloaded(Place place, Source source, OffsetDateTime at) {
        floor.crew(place.station(), at)
                .tell(at, "discharge", "station", place.station(), "position", place.position(), "lot", source.lot());
    }

    void tellPurged(Place place, OffsetDateTime at) {
        floor.crew(place.station(), at)
                .tell(
                        at,
                        "clean-point",
                        Bodies.of(
                                "station",
                                place.station(),
                                "position",
                                place.position(),
                                "evidence",
                                "Purged and wiped; no residue seen at the outlet"));
    }

    /** Takes off what is loaded, purges, and loads the next, each told as it is. */
    void changeCleanly(Place place, Source next, OffsetDateTime begin) {
        if (isLoaded(place)) {
            Source before = at(place, begin);
            trulyUnload(place, begin);
            tellUnloaded(place, before, begin);
            trulyPurge(place, begin.plusMinutes(8));
            tellPurged(place, begin.plusMinutes(8));
        }
        trulyLoad(place, next, begin.plusMinutes(16));
        tellLoaded(place, next, begin.plusMinutes(16));
    }
}
