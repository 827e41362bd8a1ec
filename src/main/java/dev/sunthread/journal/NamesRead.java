package dev.sunthread.journal;

import dev.sunthread.inbox.KeptLine.Name;
import dev.sunthread.inbox.KeptLine.NameKind;
import dev.sunthread.ledger.EnvelopeReader;
import dev.sunthread.ledger.body.TextForm;
import dev.sunthread.ledger.body.Unreadable;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;

/** Finds the units, lots, positions, containers, carriers and runs that a line names, even if the line is no JSON. */
final class NamesRead {

    private static final int MOST = 200;

    private static final Map<String, NameKind> FIELDS = new TreeMap<>(Map.of(
            "serial", NameKind.UNIT,
            "lot", NameKind.LOT,
            "lots", NameKind.LOT,
            "into", NameKind.LOT,
            "position", NameKind.POSITION,
            "container", NameKind.CONTAINER,
            "label", NameKind.CONTAINER,
            "carrier", NameKind.CARRIER,
            "run", NameKind.RUN));

    private static final Pattern NAMED = Pattern.compile(
            "\"(" + String.join("|", FIELDS.keySet()) + ")\"\\s*+:\\s*+(?:\\[\\s*+)?+\"([^\"\\\\]{1,64})\"");

    private NamesRead() {}

    static List<Name> in(String text) {
        return readable(text)
                .map(NamesRead::named)
                .orElseGet(() -> NAMED.matcher(text).results().map(NamesRead::name))
                .filter(name -> TextForm.CODE.fits(name.name()))
                .distinct()
                .limit(MOST)
                .toList();
    }

    private static Optional<JsonNode> readable(String text) {
        try {
            return Optional.of(EnvelopeReader.parse(text));
        } catch (Unreadable e) {
            return Optional.empty();
        }
    }

    private static Stream<Name> named(JsonNode json) {
        return FIELDS.entrySet().stream()
                .flatMap(field -> json.findValues(field.getKey()).stream()
                        .flatMap(value -> value.isArray() ? value.valueStream() : Stream.of(value))
                        .filter(JsonNode::isString)
                        .map(value -> new Name(field.getValue(), value.stringValue())));
    }

    private static Name name(MatchResult found) {
        NameKind kind = FIELDS.getOrDefault(found.group(1), NameKind.LOT);
        return new Name(kind, found.group(2));
    }
}
