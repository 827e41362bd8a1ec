package dev.sunthread.genealogy;

import dev.sunthread.ledger.Envelope;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import tools.jackson.databind.JsonNode;

/** Everything that envelopes name in their bodies, by the field it stands in, whether it was told yet or not. */
final class NamedInBodies {

    private static final Map<String, String> FIELDS = Map.of("lots", "lot", "into", "lot", "label", "container");

    private final Map<String, SortedSet<String>> names = new TreeMap<>();
    private final List<Map<String, String>> units = new ArrayList<>();
    private final SortedSet<OffsetDateTime> moments = new TreeSet<>();

    NamedInBodies(List<Envelope> envelopes) {
        for (Envelope envelope : envelopes) {
            moments.add(envelope.occurredAt());
            collect("", envelope.body());
        }
    }

    List<String> of(String field) {
        return List.copyOf(names.getOrDefault(field, new TreeSet<>()));
    }

    /** Each with its item, serial and perhaps issuer. */
    List<Map<String, String>> units() {
        return units;
    }

    List<OffsetDateTime> moments() {
        return List.copyOf(moments);
    }

    private void collect(String field, JsonNode value) {
        if (value.isString()) {
            names.computeIfAbsent(FIELDS.getOrDefault(field, field), any -> new TreeSet<>())
                    .add(value.stringValue());
        } else if (value.isArray()) {
            value.forEach(one -> collect(field, one));
        } else if (value.isObject()) {
            addUnit(value);
            value.properties().forEach(part -> collect(part.getKey(), part.getValue()));
        }
    }

    private void addUnit(JsonNode value) {
        if (value.has("serial") && value.has("item")) {
            Map<String, String> unit = new TreeMap<>();
            List.of("item", "serial", "issuer").forEach(part -> {
                if (value.has(part)) {
                    unit.put(part, value.get(part).stringValue());
                }
            });
            if (!units.contains(unit)) {
                units.add(unit);
            }
        }
    }
}
