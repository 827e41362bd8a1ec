package dev.sunthread.station.work;

import dev.sunthread.catalog.Item;
import dev.sunthread.catalog.Items;
import dev.sunthread.catalog.Position;
import dev.sunthread.catalog.PositionItems;
import dev.sunthread.catalog.Stations;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;

/** The positions of a station, and which items each takes. */
@Component
public class LoadablePositions {

    private final StationLoads loads;
    private final Stations stations;
    private final PositionItems taken;
    private final Items items;

    LoadablePositions(StationLoads loads, Stations stations, PositionItems taken, Items items) {
        this.loads = loads;
        this.stations = stations;
        this.taken = taken;
        this.items = items;
    }

    public List<String> all(String station) {
        return loads.positions(station);
    }

    /** Those that take an item, by the revision in force; all where no record tells the item. */
    List<String> taking(String item, String station, OffsetDateTime at) {
        return all(station).stream()
                .filter(position -> takes(stated(station, position, at), item, at))
                .toList();
    }

    private boolean takes(List<Item> stated, String number, OffsetDateTime at) {
        return stated.isEmpty()
                || items.find(number)
                        .map(item -> taken.areOrStandInFor(stated, item.id(), at))
                        .orElse(true);
    }

    /** The numbers of the items that a position takes; empty for any. */
    public String numbers(String station, String position, OffsetDateTime at) {
        return stated(station, position, at).stream().map(Item::number).collect(Collectors.joining(", "));
    }

    private List<Item> stated(String station, String code, OffsetDateTime at) {
        Position position = stations.position(station, code, "position");
        return taken.stated(position, at);
    }
}
