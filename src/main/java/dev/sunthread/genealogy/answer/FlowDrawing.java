package dev.sunthread.genealogy.answer;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.Flow;
import dev.sunthread.genealogy.Flow.Link;
import dev.sunthread.genealogy.Flow.Node;
import dev.sunthread.genealogy.Flow.What;
import dev.sunthread.genealogy.Way;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Puts the counts of one answer into columns: suspects, lots, containers and runs, units by depth, places. */
public final class FlowDrawing {

    private static final int MOST_PLACES = 10;
    private static final String SUSPECTS = "suspects";
    private static final String OTHER = "other places";

    /** How many things of a level and class there are, and how many levels may lie inside it. */
    public record Level(String kind, String level, int depth, Certainty certainty, long things) {
        String id() {
            return FlowDrawing.id(level, certainty);
        }

        // lots fill containers, both go into runs and units
        int rank() {
            return switch (kind) {
                case "LOT" -> 1;
                case "UNIT" -> 3 + depth;
                default -> 2;
            };
        }
    }

    /** How many outermost units of a level and class were last seen at a place. */
    public record Stand(String place, String level, Certainty certainty, long things) {}

    private final Way way;
    private final List<Level> levels;
    private final List<Stand> stands;
    private final Set<String> shown;
    private final Map<String, Integer> columns = new HashMap<>();

    public FlowDrawing(Way way, List<Level> levels, List<Stand> stands) {
        this.way = way;
        this.levels = levels.stream()
                .sorted(Comparator.comparing(Level::rank)
                        .thenComparing(Level::level)
                        .thenComparing(Level::certainty))
                .toList();
        this.stands = stands;
        this.shown = fullestPlaces();
    }

    private Set<String> fullestPlaces() {
        Map<String, Long> things =
                stands.stream().collect(Collectors.groupingBy(Stand::place, Collectors.summingLong(Stand::things)));
        return things.entrySet().stream()
                .sorted(Map.Entry.<String, Long>comparingByValue().reversed().thenComparing(Map.Entry.comparingByKey()))
                .limit(MOST_PLACES)
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
    }

    public Flow of(List<FlowCount> flows, long suspects) {
        List<Level> levels = new ArrayList<>(this.levels);
        keptLines(flows).ifPresent(levels::add);
        List<Node> nodes = new ArrayList<>();
        boolean forward = way == Way.FORWARD;
        int first = forward ? 1 : 0;
        List<Integer> ranks =
                new ArrayList<>(new TreeSet<>(levels.stream().map(Level::rank).toList()));
        Node root = new Node(SUSPECTS, What.SUSPECTS, forward ? 0 : ranks.size(), null, null, null, suspects);
        nodes.add(root);
        levels.forEach(level -> nodes.add(new Node(
                level.id(),
                What.LEVEL,
                first + ranks.indexOf(level.rank()),
                level.level(),
                level.certainty(),
                null,
                level.things())));
        nodes.addAll(places(ranks.size() + 1));
        nodes.sort(Comparator.comparingInt(Node::column));
        nodes.forEach(node -> columns.put(node.id(), node.column()));
        return new Flow(nodes, links(flows));
    }

    // counts what kept lines led to
    private static Optional<Level> keptLines(List<FlowCount> flows) {
        long led = flows.stream()
                .filter(flow -> Flow.KEPT_LINE.equals(flow.nearLevel()))
                .mapToLong(FlowCount::things)
                .sum();
        return led == 0
                ? Optional.empty()
                : Optional.of(new Level("KEPT_LINE", Flow.KEPT_LINE, 0, Certainty.POSSIBLE, led));
    }

    private List<Node> places(int column) {
        Map<String, Long> things = new LinkedHashMap<>();
        stands.stream()
                .sorted(Comparator.comparing((Stand stand) -> placeId(stand)))
                .forEach(stand -> things.merge(placeId(stand), stand.things(), Long::sum));
        return things.entrySet().stream()
                .map(place -> place.getKey().equals(OTHER)
                        ? new Node(OTHER, What.OTHER_PLACES, column, null, null, null, place.getValue())
                        : new Node(
                                place.getKey(),
                                What.PLACE,
                                column,
                                null,
                                null,
                                place.getKey().substring("at ".length()),
                                place.getValue()))
                .toList();
    }

    private String placeId(Stand stand) {
        return shown.contains(stand.place()) ? "at " + stand.place() : OTHER;
    }

    private List<Link> links(List<FlowCount> flows) {
        List<Link> links = new ArrayList<>();
        flows.forEach(flow -> {
            String near = flow.nearLevel() == null ? SUSPECTS : id(flow.nearLevel(), flow.nearClass());
            String own = id(flow.level(), flow.certainty());
            links.add(way == Way.FORWARD ? link(near, own, flow.things()) : link(own, near, flow.things()));
        });
        Map<String, Map<String, Long>> at = new LinkedHashMap<>();
        stands.forEach(stand -> at.computeIfAbsent(id(stand.level(), stand.certainty()), any -> new LinkedHashMap<>())
                .merge(placeId(stand), stand.things(), Long::sum));
        at.forEach((from, places) -> places.forEach((place, things) -> links.add(link(from, place, things))));
        links.sort(Comparator.comparing((Link link) -> columns.getOrDefault(link.from(), 0))
                .thenComparing(Link::from)
                .thenComparing(link -> columns.getOrDefault(link.to(), 0))
                .thenComparing(Link::to));
        return links;
    }

    private Link link(String from, String to, long things) {
        return new Link(from, to, things, columns.getOrDefault(from, 0) >= columns.getOrDefault(to, 0));
    }

    private static String id(String level, @Nullable Certainty certainty) {
        return level + " " + certainty;
    }
}
