package dev.sunthread.genealogy.line;

import dev.sunthread.genealogy.records.Happening;
import dev.sunthread.genealogy.records.OpenLine;
import dev.sunthread.genealogy.records.OpenLine.Part;
import dev.sunthread.inbox.LineText;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The ways in which a line of each kind can carry matter between the things that it names: a step from material to
 * units, a hold nowhere.
 */
public final class LineWays {

    /** Kinds that can move matter between things that they name, or say where something is. */
    static final Set<String> MOVING = Set.of(
            "step",
            "charge",
            "discharge",
            "clean-point",
            "installation",
            "removal",
            "recovery",
            "carrier-load",
            "carrier-unload",
            "cure-run",
            "test-run",
            "blend",
            "split",
            "merge",
            "relabel",
            "regrade",
            "container");

    /** The fields with what lots or containers were made or filled of, by the kind of the making. */
    static final Map<String, String> SOURCES = Map.of(
            "blend",
            "components",
            "merge",
            "lots",
            "split",
            "lot",
            "relabel",
            "lot",
            "regrade",
            "lot",
            "container",
            "lot");

    /** Kinds that take another entry back: of themselves they move nothing. */
    static final Set<String> TAKING_BACK = Set.of("void", "correction");

    /** Kinds that move nothing, whatever they name. */
    static final Set<String> MOVING_NOTHING = Set.of(
            "attachment",
            "birth",
            "calibration",
            "container-move",
            "container-opening",
            "count",
            "deviation",
            "equipment",
            "fault",
            "finding-settlement",
            "form-entry",
            "form-sheet",
            "form-void",
            "hold",
            "hold-release",
            "incoming-release",
            "issue",
            "item",
            "line-settlement",
            "lot-ending",
            "receipt",
            "recipe",
            "return",
            "route",
            "rule-pass",
            "sample",
            "scan-choice",
            "scrap",
            "serial-issue",
            "shipment",
            "soft-rules",
            "specification",
            "station",
            "station-behind",
            "station-caught-up",
            "stock-return",
            "structure",
            "typed-label",
            "unproven-times",
            "verification",
            "waste");

    private LineWays() {}

    /** Whether what stands in a field is one of those of which something was made, or may be. */
    static boolean isSource(String field, String sources) {
        return field.equals(sources)
                || field.startsWith(sources + ".") && (field.endsWith(".lot") || field.endsWith(".container"))
                || field.equals(LineText.SOMEWHERE + "lot")
                || field.equals(LineText.SOMEWHERE + "lots");
    }

    /** The lots and containers that a line tells to have been made or filled, or may tell. */
    public static List<TraceRef> made(OpenLine line) {
        String kind = line.kind();
        return kind == null || !SOURCES.containsKey(kind)
                ? List.of()
                : line.parts().stream()
                        .filter(part -> part.isOf(TraceKind.LOT, TraceKind.CONTAINER) && mayTake(line, part))
                        .map(Part::node)
                        .distinct()
                        .toList();
    }

    /** Whether there is a kind of this name. */
    static boolean isKnown(String kind) {
        return MOVING.contains(kind) || MOVING_NOTHING.contains(kind) || TAKING_BACK.contains(kind);
    }

    /** What a line does to the units and carriers that it may act on, as a happening. */
    public static Happening acting(OpenLine line) {
        return new Happening(
                line.node(),
                line.entry(),
                line.start(),
                line.end().orLater(line.start()),
                taking(line, TraceKind.UNIT),
                taking(line, TraceKind.CARRIER),
                line.operation(),
                null);
    }

    private static Set<TraceRef> taking(OpenLine line, TraceKind kind) {
        return line.parts().stream()
                .filter(part -> part.isOf(kind) && mayTake(line, part))
                .map(Part::node)
                .collect(Collectors.toSet());
    }

    /** Whether matter of this part may have gone into something else that the line names. */
    public static boolean mayGive(OpenLine line, Part part) {
        String kind = line.kind();
        if (kind == null) {
            return false;
        }
        return switch (kind) {
            case "step" -> part.isOf(TraceKind.LOT, TraceKind.CONTAINER);
            case "discharge" -> part.field().equals("lot") || isSomewhere(part);
            case "blend" -> part.field().startsWith("components.") || isSomewhere(part);
            case "split" -> !part.field().startsWith("into.");
            case "merge", "relabel", "regrade" -> !part.field().equals("into");
            case "container" -> part.isOf(TraceKind.LOT);
            case "recovery" -> part.isOf(TraceKind.UNIT);
            case "cure-run" -> part.isOf(TraceKind.CURE_RUN);
            case "test-run" -> part.isOf(TraceKind.TEST_RUN);
            default -> false;
        };
    }

    /** Whether matter of something else that the line names may have gone into this part. */
    public static boolean mayTake(OpenLine line, Part part) {
        String kind = line.kind();
        if (kind == null) {
            return false;
        }
        return switch (kind) {
            case "step", "cure-run", "test-run" -> part.isOf(TraceKind.UNIT, TraceKind.CARRIER);
            case "discharge", "merge", "relabel", "regrade" ->
                part.field().endsWith("into") || part.field().equals(LineText.SOMEWHERE + "lot");
            case "blend" -> part.field().equals("lot") || isSomewhere(part);
            case "split" -> part.field().startsWith("into.") || isSomewhere(part);
            case "container" -> part.isOf(TraceKind.CONTAINER);
            case "recovery" -> part.isOf(TraceKind.LOT, TraceKind.CONTAINER);
            default -> false;
        };
    }

    /** Whether what was loaded at the positions that it names may have gone into something else that it names. */
    public static boolean mayDraw(OpenLine line) {
        return line.isOfKind("step", "discharge");
    }

    private static boolean isSomewhere(Part part) {
        return part.field().startsWith(LineText.SOMEWHERE);
    }
}
