package dev.sunthread.catalog;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Reads the operations of one released revision of a route. */
@Repository
class RouteReading {

    private static final String OPERATIONS = """
            SELECT o.sequence, o.operation, o.name, o.qualified, o.online_only, o.unit_alone,
              ARRAY(SELECT s.code FROM catalog.route_station t JOIN catalog.station s ON s.id = t.station
                    WHERE t.entry = o.entry AND t.operation = o.operation) AS stations,
              ARRAY(SELECT c.caution FROM catalog.route_caution c
                    WHERE c.entry = o.entry AND c.operation = o.operation) AS cautions
            FROM catalog.route_operation o WHERE o.entry = ? ORDER BY o.sequence
            """;

    private static final String CONSUMED = """
            SELECT c.operation, i.id, i.number, i.tracking, i.level, i.unit_of_measure,
              a.id AS other, a.number AS other_number, a.tracking AS other_tracking, a.level AS other_level,
              a.unit_of_measure AS other_unit
            FROM catalog.route_consumption c JOIN catalog.item i ON i.id = c.item
            LEFT JOIN catalog.route_alternate r USING (entry, operation, item)
            LEFT JOIN catalog.item a ON a.id = r.alternate
            WHERE c.entry = ? ORDER BY i.number, a.number
            """;

    private static final String WINDOWS = """
            SELECT w.operation, w.after, w.at_least, w.at_most FROM catalog.route_window w
            JOIN catalog.route_operation a ON a.entry = w.entry AND a.operation = w.after
            WHERE w.entry = ? ORDER BY a.sequence
            """;

    private final JdbcClient jdbc;

    RouteReading(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The operations of a revision in their order, each with those of the demands that are its own. */
    List<RouteStep> read(long revision, List<Demand> demanded) {
        Map<String, List<RouteStep.Consumed>> consumed = consumed(revision);
        Map<String, List<RouteStep.Window>> windows = windows(revision);
        Map<String, List<Demand>> demandsOf = demanded.stream().collect(Collectors.groupingBy(Demand::operation));
        return jdbc.sql(OPERATIONS)
                .param(revision)
                .query((row, number) -> {
                    String operation = row.getString("operation");
                    return new RouteStep(
                            row.getInt("sequence"),
                            operation,
                            row.getString("name"),
                            consumed.getOrDefault(operation, List.of()),
                            demandsOf.getOrDefault(operation, List.of()),
                            new TreeSet<>(words(row, "stations", Function.identity())),
                            windows.getOrDefault(operation, List.of()),
                            cautions(row),
                            row.getBoolean("qualified"),
                            row.getBoolean("online_only"),
                            row.getBoolean("unit_alone"));
                })
                .list();
    }

    private Map<String, List<RouteStep.Consumed>> consumed(long revision) {
        Map<String, Map<Item, List<Item>>> items = new HashMap<>();
        jdbc.sql(CONSUMED).param(revision).query(row -> {
            List<Item> alternates = items.computeIfAbsent(row.getString("operation"), any -> new LinkedHashMap<>())
                    .computeIfAbsent(
                            item(row, "id", "number", "tracking", "level", "unit_of_measure"),
                            any -> new ArrayList<>());
            if (row.getString("other_number") != null) {
                alternates.add(item(row, "other", "other_number", "other_tracking", "other_level", "other_unit"));
            }
        });
        Map<String, List<RouteStep.Consumed>> consumed = new HashMap<>();
        items.forEach((operation, taken) -> consumed.put(
                operation,
                taken.entrySet().stream()
                        .map(one -> new RouteStep.Consumed(one.getKey(), List.copyOf(one.getValue())))
                        .toList()));
        return consumed;
    }

    private static Item item(ResultSet row, String... columns) throws SQLException {
        return new Item(
                row.getLong(columns[0]),
                row.getString(columns[1]),
                Tracking.valueOf(row.getString(columns[2])),
                row.getString(columns[3]),
                row.getString(columns[4]));
    }

    private Map<String, List<RouteStep.Window>> windows(long revision) {
        Map<String, List<RouteStep.Window>> windows = new HashMap<>();
        jdbc.sql(WINDOWS).param(revision).query(row -> {
            windows.computeIfAbsent(row.getString("operation"), any -> new ArrayList<>())
                    .add(new RouteStep.Window(
                            row.getString("after"), seconds(row, "at_least"), seconds(row, "at_most")));
        });
        return windows;
    }

    private static @Nullable Duration seconds(ResultSet row, String column) throws SQLException {
        int seconds = row.getInt(column);
        return row.wasNull() ? null : Duration.ofSeconds(seconds);
    }

    private static Set<Caution> cautions(ResultSet row) throws SQLException {
        Set<Caution> cautions = EnumSet.noneOf(Caution.class);
        cautions.addAll(words(row, "cautions", Caution::valueOf));
        return cautions;
    }

    private static <T> List<T> words(ResultSet row, String column, Function<String, T> read) throws SQLException {
        List<T> words = new ArrayList<>();
        for (Object word : (Object[]) row.getArray(column).getArray()) {
            words.add(read.apply((String) word));
        }
        return words;
    }
}
