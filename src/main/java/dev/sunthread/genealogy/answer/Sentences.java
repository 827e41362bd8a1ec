package dev.sunthread.genealogy.answer;

import dev.sunthread.genealogy.Certainty;
import dev.sunthread.genealogy.walk.Edge;
import dev.sunthread.kernel.TraceKind;
import dev.sunthread.kernel.TraceRef;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Says in words why an edge exists, with times in the plant's zone. */
final class Sentences {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss");

    private final Names names;
    private final ZoneId zone;

    Sentences(Names names, ZoneId zone) {
        this.names = names;
        this.zone = zone;
    }

    String of(Edge edge) {
        String what = words(edge.from());
        String into = words(edge.to());
        Map<String, String> said = edge.reason().named();
        return switch (edge.reason().key()) {
            case "installed" -> capital(what) + " was put into " + into + at(said) + span(said);
            case "removed-without-installation" ->
                capital(what) + " was taken out of " + into + at(said) + " " + time(said, "to")
                        + ", though no installation is recorded";
            case "candidate" -> candidate(edge, what, said);
            case "not-recorded" -> notRecorded(edge, into, said);
            case "may-be-recovered" -> "material of " + what + " may have been recovered";
            case "may-be-of-a-unit" -> "no record tells where " + into + " came from";
            case "may-have-been-around" -> "no record tells what " + into + " was in then, or around";
            case "may-have-been-inside" -> "no record tells whether " + into + " was inside";
            case "went-through" -> capital(what) + span(said) + " acted on " + into;
            case "kept-line" ->
                capital(what) + " may have " + (isActing(edge.from()) ? "acted on " : "gone into ") + into
                        + byLine(edge.reason().entry()) + atTime(said);
            case "filled" ->
                capital(what)
                        + (edge.to().kind() == TraceKind.LOT_CONTENT
                                ? " may be the container that was not scanned"
                                : " was filled into " + into + atTime(said));
            case "labelled" ->
                capital(what)
                        + (edge.to().kind() == TraceKind.LOT_CONTENT
                                ? " may be the container that was not scanned"
                                : " was named with " + into + ", though no filling of it is recorded");
            case "unloaded" -> capital(what) + " was loaded" + loadedWhere(said) + " and went on as " + into;
            case "recovered" -> "Material of " + what + " was recovered into " + into + atTime(said);
            case "blend", "top-up", "kit", "split", "merge", "regrade", "relabel", "recovery", "unloading" ->
                capital(what) + " went into " + into + " by " + edge.reason().key() + atTime(said);
            default -> capital(what) + " " + loaded(told(edge), said) + "; " + into + used(said);
        };
    }

    private static boolean isActing(TraceRef node) {
        return node.kind() == TraceKind.CURE_RUN
                || node.kind() == TraceKind.TEST_RUN
                || node.kind() == TraceKind.KEPT_LINE;
    }

    private String byLine(long entry) {
        return " by kept line "
                + names.of(new TraceRef(TraceKind.KEPT_LINE, entry)).name();
    }

    private String words(TraceRef node) {
        return switch (node.kind()) {
            case GAP, INSIDE_GAP, AROUND_GAP, RECOVERY_GAP -> "something that is not recorded";
            case LOT_CONTENT ->
                "a container of lot " + names.of(TraceRef.lot(node.id())).name();
            default -> names.of(node).words();
        };
    }

    private String candidate(Edge edge, String what, Map<String, String> said) {
        return switch (edge.from().kind()) {
            case UNIT -> capital(what) + " has no recorded place then";
            case CURE_RUN, TEST_RUN -> capital(what) + span(said) + " may have been the one that is demanded";
            default -> capital(what) + " was in the plant" + span(said);
        };
    }

    private String notRecorded(Edge edge, String into, Map<String, String> said) {
        String position = said.get("position");
        String operation = said.get("operation");
        String what = position != null
                ? "what is at position " + position + " of " + into
                : edge.to().kind() == TraceKind.LOT ? "a component of " + into : "what went into " + into;
        return what + (operation == null ? "" : " at " + operation) + span(said) + " is not recorded";
    }

    private String atTime(Map<String, String> said) {
        return said.containsKey("at") ? " at " + time(said, "at") : "";
    }

    /** A lot that was the one loaded is told as such only if nothing, such as another scan, speaks against it. */
    private static String told(Edge edge) {
        boolean doubted =
                edge.certainty() != Certainty.CERTAIN && edge.reason().key().equals("inferred");
        return doubted ? "may-be-loaded" : edge.reason().key();
    }

    private String loaded(String key, Map<String, String> said) {
        String line = said.get("line");
        return loadedAs(key, said) + (line == null ? "" : "," + byLine(Long.parseLong(line)));
    }

    private String loadedAs(String key, Map<String, String> said) {
        return switch (key) {
            case "scanned" -> "was scanned as used" + loadedWhere(said);
            case "inferred" -> "was the one loaded" + loadedWhere(said) + " (inferred, not scanned)";
            case "carried-over" -> "was loaded earlier" + loadedWhere(said) + ", with no clean point since";
            case "other-item-loaded" -> "was loaded" + loadedWhere(said) + ", though it is of another item";
            case "scan-disagrees" -> "was scanned as used, though another lot is recorded as loaded";
            case "changed-meanwhile" -> "was scanned as used, though what was loaded changed meanwhile";
            default -> "may have been loaded" + loadedWhere(said);
        };
    }

    private String loadedWhere(Map<String, String> said) {
        String position = said.get("position");
        return position == null ? "" : " at " + position + span(said);
    }

    private String used(Map<String, String> said) {
        return " went through " + said.get("operation") + " at " + said.get("station") + " " + time(said, "used");
    }

    private static String at(Map<String, String> said) {
        String position = said.get("position");
        return position == null ? "" : " at position " + position;
    }

    private String span(Map<String, String> said) {
        String from = said.containsKey("from") ? " from " + time(said, "from") : "";
        String to = said.containsKey("to") ? " to " + time(said, "to") : "";
        return from + to;
    }

    /** The time as its clock told it: the middle of what it may have been. */
    private String time(Map<String, String> said, String name) {
        long early = micros(said.get(name));
        String late = said.get(name + "AtLatest");
        long told = late == null ? early : early + (micros(late) - early) / 2;
        Instant instant = Instant.ofEpochSecond(Math.floorDiv(told, 1_000_000), Math.floorMod(told, 1_000_000) * 1000);
        return TIME.format(instant.atZone(zone));
    }

    private static long micros(@Nullable String text) {
        return text == null ? 0 : Long.parseLong(text);
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
