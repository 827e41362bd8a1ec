package dev.sunthread.production;

import dev.sunthread.catalog.Stations;
import dev.sunthread.ledger.Fact;
import java.sql.Types;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Writes what was put where, with the state that follows from it. */
@Repository
class Installations {

    private static final String INSERT = """
            INSERT INTO production.installation
              (entry, child_unit, child_lot, quantity, unit_of_measure, parent_position, station, installed_at)
            SELECT :entry, :unit, :lot, :quantity, :unitOfMeasure, position.id, :station, :at FROM position
            """;

    /** Of a child and a position that have no history: nothing can end the stay or contradict it. */
    private static final String INSERT_FIRST = """
            WITH position AS (
              INSERT INTO production.parent_position (parent, position) VALUES (:parent, :position) RETURNING id),
            installation AS (%s)
            INSERT INTO production.stay (entry, child_unit, child_lot, parent_position, during, applied)
            SELECT :entry, :unit, :lot, position.id, tstzrange(:at, NULL, '[)'), true FROM position
            """.formatted(INSERT);

    private final Stations stations;
    private final Stays stays;
    private final Places places;
    private final JdbcClient jdbc;

    Installations(Stations stations, Stays stays, Places places, JdbcClient jdbc) {
        this.stations = stations;
        this.stays = stays;
        this.places = places;
        this.jdbc = jdbc;
    }

    /** Gives whether the installation is applied, or kept apart because it contradicts one recorded before. */
    boolean record(Fact<InstallationKind.Body> fact, Children.Child child, long parent) {
        boolean isFirst = places.name(child, parent, fact.body().position());
        insert(isFirst ? INSERT_FIRST : Stays.WITH_POSITION + INSERT, fact, child, parent);
        return isFirst || stays.begin(fact.entry());
    }

    private void insert(String sql, Fact<InstallationKind.Body> fact, Children.Child child, long parent) {
        InstallationKind.Body body = fact.body();
        jdbc.sql(sql)
                .param("entry", fact.entry())
                .param("unit", child.unit(), Types.BIGINT)
                .param("lot", child.lot(), Types.BIGINT)
                .param("quantity", body.child().quantity(), Types.NUMERIC)
                .param("unitOfMeasure", body.child().unitOfMeasure(), Types.VARCHAR)
                .param("parent", parent)
                .param("position", body.position())
                .param("station", stations.idOf(body.station(), "body.station"), Types.BIGINT)
                .param("at", fact.occurredAt(), Types.TIMESTAMP_WITH_TIMEZONE)
                .update();
    }
}
