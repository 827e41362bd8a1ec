package dev.sunthread.simulator.world;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** The plant's items, routes, structures and stations: four levels of units, eight materials by lot. */
public final class Layout {

    public static final List<String> UNIT_ITEMS = List.of("RCV", "WALL", "MOD", "PANEL");
    public static final List<String> LOT_ITEMS = List.of("ADH", "ADB", "PRI", "COAT", "BASE", "HARD", "MIX", "LENS");

    /** What may be taken in instead of what, where a route or formula names the first. */
    public static final Map<String, String> ALTERNATES = Map.of("ADH", "ADB");

    /** The item that one may be regraded to, if there is one. */
    public static @Nullable String otherGrade(String item) {
        return item.equals("ADH") ? "ADB" : item.equals("ADB") ? "ADH" : null;
    }

    public static final Map<String, List<String>> POSITIONS = Map.of(
            "BOND", List.of("V1", "V2"),
            "PRIME", List.of("P1"),
            "COATER", List.of("T1"),
            "GLUE", List.of("G1"),
            "SEAL", List.of("M1"),
            "RIG", List.of(),
            "OVEN", List.of(),
            "LINE", List.of());

    /** A position whose content mixes, so that what is taken off goes on as a new lot. */
    public static final Place TANK = new Place("COATER", "T1");

    private static final Map<String, List<Operation>> ROUTES = Map.of(
            "RCV",
            List.of(
                    new Operation("bond", "BOND", "ADH", "CURE", null, false),
                    new Operation("check", "RIG", null, null, "IV", false),
                    new Operation("mark", "PRIME", "PRI", null, null, true)),
            "WALL",
            List.of(
                    new Operation("fit", "LINE", "RCV", null, null, false),
                    new Operation("coat", "COATER", "COAT", "BAKE", null, false),
                    new Operation("glue", "GLUE", "ADH", null, null, false)),
            "MOD",
            List.of(
                    new Operation("load", "LINE", "WALL", null, null, false),
                    new Operation("lens", "LINE", "LENS", null, null, false),
                    new Operation("seal", "SEAL", "MIX", null, null, false),
                    new Operation("flash", "RIG", null, null, "FLASH", false)),
            "PANEL",
            List.of(
                    new Operation("hang", "LINE", "MOD", null, null, false),
                    new Operation("join", "GLUE", "ADH", null, null, false)));

    private Layout() {}

    /** One operation of a route: where it is done, what it takes in, which cure or test it demands. */
    public record Operation(
            String code,
            String station,
            @Nullable String consumes,
            @Nullable String cure,
            @Nullable String test,
            boolean alone) {

        /** Whether it takes material in at its station, and not what goes into positions of the unit. */
        public boolean takesMaterial() {
            return consumes != null
                    && !POSITIONS.getOrDefault(station, List.of()).isEmpty();
        }
    }

    public static List<Operation> route(String item) {
        return Objects.requireNonNull(ROUTES.get(item), item);
    }

    /** The place of an operation in the route of an item, from 0; -1 if it has none. */
    public static int rank(String item, String operation) {
        List<Operation> route = route(item);
        return IntStream.range(0, route.size())
                .filter(i -> route.get(i).code().equals(operation))
                .findFirst()
                .orElse(-1);
    }

    /** The place in the route of an item of the operation that demands a cure, from 0; -1 if none does. */
    public static int rankOfCure(String item, String recipe) {
        return route(item).stream()
                .filter(operation -> recipe.equals(operation.cure()))
                .map(operation -> rank(item, operation.code()))
                .findFirst()
                .orElse(-1);
    }

    /** The place in the route of an item of the operation that fills a position, from 0. */
    public static int rankTaking(String item, String position) {
        String child = structure(item).get(position);
        List<Operation> route = route(item);
        return IntStream.range(0, route.size())
                .filter(i -> Objects.equals(route.get(i).consumes(), child))
                .findFirst()
                .orElseThrow();
    }

    /** What goes into the positions of a unit, or into a lot that is mixed. */
    public static Map<String, String> structure(String item) {
        return switch (item) {
            case "WALL" -> Map.of("R1", "RCV", "R2", "RCV");
            case "MOD" -> Map.of("W1", "WALL", "L1", "LENS");
            case "PANEL" -> Map.of("M1", "MOD");
            case "MIX" -> Map.of("B", "BASE", "H", "HARD");
            default -> Map.of();
        };
    }
}
