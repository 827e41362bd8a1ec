package dev.sunthread.genealogy;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Says in words why an edge exists, with times in the plant's zone. */
final class Wording {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss");

    private final Names names;
    private final ZoneId zone;

    Wording(Names names, ZoneId zone) {
        this.names = names;
        this.zone = zone;
    }

    /** Each step of a path, in words. */
    List<String> steps(List<Edge> path) {
        return path.stream().map(this::sentence).toList();
    }

    /** The shortest reason: how it began, and where that led. */
    String reason(List<Edge> path) {
        if (path.isEmpty()) {
            return "It is what the trace began with";
        }
        String first = sentence(path.get(0));
        if (path.size() == 1) {
            return first;
        }
        StringBuilder way = new StringBuilder(first + "; from there into ");
        for (int i = 1; i < path.size(); i++) {
            way.append(i > 1 ? ", then " : "").append(names.of(path.get(i).to()).words());
        }
        return way.toString();
    }

    private String sentence(Edge edge) {
        String what = names.of(edge.from()).words();
        String into = names.of(edge.to()).words();
        Map<String, String> said = edge.reason().named();
        return switch (edge.reason().key()) {
            case "installed" -> capital(what) + " was put into " + into + at(said) + span(said);
            case "removed-without-installation" ->
                capital(what) + " was taken out of " + into + at(said) + " " + time(said, "to")
                        + ", though no installation is recorded";
            default -> capital(what) + " " + loaded(told(edge), said) + "; " + into + used(said);
        };
    }

    /** A lot that was the one loaded is told as such only if nothing, such as another scan, speaks against it. */
    private static String told(Edge edge) {
        boolean doubted =
                edge.certainty() != Certainty.CERTAIN && edge.reason().key().equals("inferred");
        return doubted ? "may-be-loaded" : edge.reason().key();
    }

    private String loaded(String key, Map<String, String> said) {
        return switch (key) {
            case "scanned" -> "was scanned as used" + loadedWhere(said);
            case "inferred" -> "was the one loaded" + loadedWhere(said) + " (inferred, not scanned)";
            case "carried-over" -> "was loaded earlier" + loadedWhere(said) + ", with no clean point since";
            case "other-item-loaded" -> "was loaded" + loadedWhere(said) + ", though it is of another item";
            case "scan-disagrees" -> "was scanned as used, though another lot is recorded as loaded";
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
