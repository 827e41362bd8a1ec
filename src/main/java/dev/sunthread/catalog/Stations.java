package dev.sunthread.catalog;

import dev.sunthread.ledger.EntryAtHand;
import dev.sunthread.ledger.body.Unreadable;
import jakarta.persistence.EntityManager;
import java.util.Optional;
import org.hibernate.Session;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;

/** Released stations and their positions, by code; looked up once per transaction. */
@Service
public class Stations {

    private final EntityManager entities;
    private final ReleasedStations stations;
    private final ReleasedPositions positions;
    private final EntryAtHand atHand;

    Stations(EntityManager entities, ReleasedStations stations, ReleasedPositions positions, EntryAtHand atHand) {
        this.atHand = atHand;
        this.entities = entities;
        this.stations = stations;
        this.positions = positions;
    }

    /** The station that a body names. @throws Unreadable if it was never released */
    public Station named(String code, String field) {
        return find(code)
                .orElseThrow(() -> Unreadable.at(
                        field,
                        "names station \"" + code + "\", which is not released",
                        "Release the station first or correct its code"));
    }

    /** The internal number of the station that a body may name. @throws Unreadable if it was never released */
    public @Nullable Long idOf(@Nullable String code, String field) {
        return code == null ? null : named(code, field).id();
    }

    /** The position on a station. @throws Unreadable if the station never had it */
    public Position position(String station, String position, String field) {
        return find(station)
                .flatMap(found -> find(found, position))
                .orElseThrow(() -> Unreadable.at(
                        field,
                        "names position \"" + position + "\", which station \"" + station + "\" does not have",
                        "Release the station with this position or correct the name"));
    }

    private Optional<Station> find(String code) {
        return session()
                .bySimpleNaturalId(ReleasedStation.class)
                .loadOptional(code)
                .map(ReleasedStation::station);
    }

    private Optional<Position> find(Station station, String position) {
        return session()
                .byNaturalId(ReleasedPosition.class)
                .using("stationId", station.id())
                .using("code", position)
                .loadOptional()
                .map(found -> found.of(station));
    }

    private Session session() {
        return entities.unwrap(Session.class);
    }

    /** The station of that code, released now if it was not. */
    Station register(String code) {
        return find(code)
                .orElseGet(() -> stations.save(new ReleasedStation(code)).station());
    }

    void registerPosition(Station station, String position) {
        if (find(station, position).isEmpty()) {
            positions.save(new ReleasedPosition(station.id(), position, atHand.number()));
        }
    }
}
