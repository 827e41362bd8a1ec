package dev.sunthread.catalog;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.DataClassRowMapper;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The items that positions of stations take, by the revision of the station in force at a time. */
@Repository
public class PositionItems {

    private static final String STATED = """
            SELECT i.id, i.number, i.tracking, i.level, i.unit_of_measure
            FROM catalog.position_item p JOIN catalog.item i ON i.id = p.item
            WHERE p.entry = ? AND p.position = ? ORDER BY i.number
            """;

    /** Whether a released route or structure in force then approves an item instead of another. */
    private static final String ALTERNATE = """
            SELECT EXISTS (
              SELECT FROM catalog.route_alternate a WHERE a.item = ANY (:stated) AND a.alternate = :item AND a.entry IN (
                SELECT DISTINCT ON (item) entry FROM catalog.route_revision WHERE effective_at <= :at
                ORDER BY item, effective_at DESC, entry DESC))
            OR EXISTS (
              SELECT FROM catalog.structure_position p JOIN catalog.structure_position q USING (entry, position)
              WHERE p.item = ANY (:stated) AND q.item = :item AND p.entry IN (
                SELECT DISTINCT ON (item) entry FROM catalog.structure_revision WHERE effective_at <= :at
                ORDER BY item, effective_at DESC, entry DESC))
            """;

    private final Revisions revisions;
    private final JdbcClient jdbc;

    PositionItems(Revisions revisions, JdbcClient jdbc) {
        this.revisions = revisions;
        this.jdbc = jdbc;
    }

    /** The items that may be loaded at a position; none if its station states none for it, which is any. */
    public List<Item> stated(Position position, OffsetDateTime at) {
        Optional<Long> revision = revisions.inForce("station_revision", "station", position.station(), at);
        return revision.map(entry -> jdbc.sql(STATED)
                        .params(entry, position.id())
                        .query(DataClassRowMapper.newInstance(Item.class))
                        .list())
                .orElse(List.of());
    }

    /** Whether an item is one of these, or approved instead of one of them by what is in force then. */
    public boolean areOrStandInFor(List<Item> stated, long item, OffsetDateTime at) {
        return stated.stream().anyMatch(one -> one.id() == item)
                || jdbc.sql(ALTERNATE)
                        .param("stated", stated.stream().map(Item::id).toArray(Long[]::new))
                        .param("item", item)
                        .param("at", at)
                        .query(Boolean.class)
                        .single();
    }
}
