package dev.sunthread.paper.entry;

import dev.sunthread.production.UnitName;
import dev.sunthread.station.label.Label;
import dev.sunthread.station.label.ScannedLabels;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Says what a written name means, by what is recorded; a name that means nothing known, or several things, stays as it is. */
@Component
class WrittenNames {

    private final ScannedLabels labels;

    WrittenNames(ScannedLabels labels) {
        this.labels = labels;
    }

    /** The only unit that a text names, of that item if it is given. */
    Optional<Label.OfUnit> unit(String text, String station, @Nullable String item) {
        return only(read(text, station, Label.OfUnit.class).stream()
                .filter(unit -> item == null || unit.name().item().equals(item))
                .toList());
    }

    /** The only lot or container that a text names. */
    Optional<Label.OfMaterial> material(String text, String station) {
        return only(read(text, station, Label.OfMaterial.class));
    }

    /** The only thing of that kind that a text names. */
    <L extends Label> Optional<L> one(String text, String station, Class<L> kind) {
        return only(read(text, station, kind));
    }

    private <L extends Label> List<L> read(String text, String station, Class<L> kind) {
        return labels.read(text, station).stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    private static <T> Optional<T> only(List<T> found) {
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    /** A unit as bodies name it. */
    ObjectNode unitBody(String text, String station, @Nullable String item) {
        UnitName name = unit(text, station, item).map(Label.OfUnit::name).orElse(null);
        ObjectNode body = JsonNodeFactory.instance.objectNode();
        if (name == null) {
            return (item == null ? body : body.put("item", item)).put("serial", text);
        }
        body.put("item", name.item()).put("serial", name.serial());
        return name.issuer() == null ? body : body.put("issuer", name.issuer());
    }

    /** Puts the lot, and the container if that is what the text names, into a body; what is unknown is taken for a lot. */
    ObjectNode material(ObjectNode body, String text, String station) {
        Optional<Label.OfMaterial> found = material(text, station);
        body.put("lot", found.map(Label.OfMaterial::lot).orElse(text));
        found.flatMap(one -> Optional.ofNullable(one.container())).ifPresent(label -> body.put("container", label));
        return body;
    }

    /** A position of the station, by its own code. */
    String position(String text, String station) {
        return one(text, station, Label.OfPosition.class)
                .map(Label.OfPosition::code)
                .orElse(text);
    }

    String carrier(String text, String station) {
        return one(text, station, Label.OfCarrier.class)
                .map(Label.OfCarrier::code)
                .orElse(text);
    }
}
