package dev.sunthread.genealogy.line;

import dev.sunthread.inbox.LineText;
import dev.sunthread.inbox.LineText.Said;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The kinds that a line whose kind can't be read may be of: those that have every field that could be read. What stands in
 * no known field is looked at by its own name.
 */
final class LineKinds {

    private static final List<String> UNIT = List.of("item", "serial", "issuer");
    private static final List<String> AMOUNT = List.of("quantity", "unitOfMeasure");

    /** What each kind that moves something, or makes something doubtful, has fields for. */
    static final Map<String, Set<String>> FIELDS = Map.ofEntries(
            Map.entry(
                    "step",
                    all(
                            List.of("operation", "station", "startedAt", "uses.item", "uses.lot", "uses.container"),
                            List.of("uses.position", "values.name", "values.value", "values.unitOfMeasure"),
                            in("units", UNIT),
                            in("uses", AMOUNT))),
            Map.entry("charge", Set.of("lot", "station", "position", "container")),
            Map.entry("discharge", Set.of("lot", "station", "position", "into")),
            Map.entry("clean-point", Set.of("station", "position", "evidence")),
            Map.entry("installation", placement()),
            Map.entry("removal", placement()),
            Map.entry("recovery", all(List.of("lot", "item", "station"), AMOUNT, in("unit", UNIT))),
            Map.entry(
                    "carrier-load",
                    all(List.of("carrier", "station", "loads.carrier", "loads.position"), in("loads.unit", UNIT))),
            Map.entry(
                    "carrier-unload", all(List.of("carrier", "station", "unloads.carrier"), in("unloads.unit", UNIT))),
            Map.entry(
                    "cure-run",
                    all(
                            List.of("run", "recipe", "equipment", "startedAt", "units.position"),
                            in("units", UNIT),
                            in("carriers", List.of("carrier", "position")),
                            in(
                                    "profile",
                                    List.of(
                                            "sensor",
                                            "position",
                                            "quantity",
                                            "unitOfMeasure",
                                            "seconds",
                                            "readings")))),
            Map.entry(
                    "test-run",
                    all(
                            List.of("run", "specification", "equipment", "startedAt", "verdict"),
                            in("unit", UNIT),
                            in("sweeps", List.of("name", "irradiance", "cellTemperature", "volts", "amperes")),
                            in("readings", List.of("path", "volts", "amperes", "seconds")))),
            Map.entry(
                    "blend",
                    all(
                            List.of("lot", "item", "way", "expiresAt", "station"),
                            List.of("components.lot", "components.container"),
                            AMOUNT,
                            in("components", AMOUNT))),
            Map.entry(
                    "split",
                    all(List.of("lot", "container", "into.lot", "into.expiresAt", "station"), in("into", AMOUNT))),
            Map.entry("merge", all(List.of("lots", "into"), AMOUNT)),
            Map.entry("relabel", Set.of("lot", "into")),
            Map.entry("regrade", all(List.of("lot", "into", "item"), AMOUNT)),
            Map.entry("container", all(List.of("lot", "containers.label"), in("containers", AMOUNT))),
            Map.entry("birth", all(List.of("station"), in("units", UNIT))),
            Map.entry("return", all(List.of("consignee"), in("units", UNIT))),
            Map.entry("shipment", all(List.of("shipment", "consignee"), in("units", UNIT))));

    private static final Set<String> KNOWN =
            FIELDS.values().stream().flatMap(Set::stream).collect(Collectors.toSet());

    private LineKinds() {}

    /** Those that what is said fits; none if it names nothing, and no station either. */
    static Set<String> thatFit(Collection<Said> said) {
        boolean namesAny =
                said.stream().anyMatch(one -> isName(one) || one.name().equals("station"));
        return !namesAny
                ? Set.of()
                : FIELDS.entrySet().stream()
                        .filter(kind -> said.stream().allMatch(one -> fits(one, kind.getValue())))
                        .map(Map.Entry::getKey)
                        .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Whether it names a thing or a position. */
    static boolean isName(Said one) {
        return !LineReading.kindsOf(one).isEmpty() || one.name().equals("position");
    }

    private static boolean fits(Said one, Set<String> fields) {
        return KNOWN.contains(one.field())
                ? fields.contains(one.field())
                : !isNamedIn(KNOWN, one) || isNamedIn(fields, one) || !isInBody(one);
    }

    // the head of an envelope has fields that some kinds have too
    private static boolean isInBody(Said one) {
        return one.within().startsWith("/body") || one.field().startsWith(LineText.SOMEWHERE);
    }

    private static boolean isNamedIn(Set<String> fields, Said one) {
        return fields.stream()
                .anyMatch(field -> field.substring(field.lastIndexOf('.') + 1).equals(one.name()));
    }

    private static Set<String> placement() {
        return all(
                List.of("position", "station", "child.lot", "child.quantity", "child.unitOfMeasure"),
                in("child.unit", UNIT),
                in("parent", UNIT));
    }

    private static List<String> in(String field, List<String> inner) {
        return inner.stream().map(name -> field + "." + name).toList();
    }

    @SafeVarargs
    private static Set<String> all(List<String>... fields) {
        return Stream.of(fields).flatMap(List::stream).collect(Collectors.toUnmodifiableSet());
    }
}
