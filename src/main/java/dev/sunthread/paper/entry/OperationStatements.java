package dev.sunthread.paper.entry;

import dev.sunthread.paper.form.Box;
import dev.sunthread.paper.form.Box.Holds;
import dev.sunthread.paper.form.Form;
import dev.sunthread.station.label.Label;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.springframework.stereotype.Component;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** What the record of an operation tells: the birth of a new unit, each part put in, and the step. */
@Component
class OperationStatements {

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

    private final WrittenNames names;

    OperationStatements(WrittenNames names) {
        this.names = names;
    }

    List<Statement> of(Form form, Filled filled, boolean madeBefore) {
        String serial = filled.in("unit").orElse("");
        // what is put in counts from the beginning of the operation on, so that nothing the operation did is missed
        Optional<OffsetDateTime> from = filled.startedAt().or(filled::endedAt);
        List<Statement> said = new ArrayList<>();
        boolean isNew = names.unit(serial, form.station(), form.item())
                .filter(Label.OfUnit::isNew)
                .isPresent();
        if (isNew || madeBefore) {
            ObjectNode birth = JSON.objectNode().put("station", form.station());
            birth.putArray("units").add(unit(form, serial));
            said.add(new Statement("birth", from, birth));
        }
        form.boxes().stream()
                .filter(box -> box.holds() == Holds.PART)
                .forEach(box ->
                        filled.in(box.name()).ifPresent(text -> said.add(installed(form, serial, box, text, from))));
        said.add(new Statement("step", filled.endedAt(), step(form, filled, serial)));
        return said;
    }

    private ObjectNode unit(Form form, String serial) {
        return names.unitBody(serial, form.station(), form.item());
    }

    private Statement installed(Form form, String serial, Box box, String text, Optional<OffsetDateTime> from) {
        ObjectNode body = JSON.objectNode()
                .put("station", form.station())
                .put("position", box.with().get(0));
        body.set("parent", unit(form, serial));
        body.set("child", part(form, box, text));
        return new Statement("installation", from, body);
    }

    // a part that nothing recorded is called is a unit if only one item with serials goes there: bodies take those as
    // told
    private ObjectNode part(Form form, Box box, String text) {
        ObjectNode child = JSON.objectNode();
        Optional<Label.OfMaterial> material = names.material(text, form.station());
        if (material.isPresent()) {
            return child.put("lot", material.get().lot());
        }
        String items = box.with().get(1);
        boolean isOne = !items.contains(" / ");
        child.set("unit", names.unitBody(text, form.station(), isOne ? items : null));
        return child;
    }

    private ObjectNode step(Form form, Filled filled, String serial) {
        ObjectNode body = JSON.objectNode().put("operation", form.operation()).put("station", form.station());
        body.putArray("units").add(unit(form, serial));
        filled.startedAt().ifPresent(at -> body.put("startedAt", EntryTimes.written(at)));
        ArrayNode uses = body.putArray("uses");
        ArrayNode values = body.putArray("values");
        for (Box box : form.boxes()) {
            filled.in(box.name()).ifPresent(text -> {
                if (box.holds() == Holds.VALUE) {
                    values.addObject()
                            .put("name", box.with().get(0))
                            .put("value", text.replace(',', '.'))
                            .put("unitOfMeasure", box.with().get(1));
                }
            });
            if (box.holds() == Holds.MATERIAL) {
                use(form, filled, box).ifPresent(uses::add);
            }
        }
        return body;
    }

    /** What was drawn, by the label, by the position, or by both, as far as they are written. */
    private Optional<ObjectNode> use(Form form, Filled filled, Box box) {
        String item = box.name().substring("use.".length());
        Optional<String> label = filled.in(box.name());
        Optional<String> position = filled.in("from." + item);
        if (label.isEmpty() && position.isEmpty()) {
            return Optional.empty();
        }
        String taken = label.flatMap(text -> names.material(text, form.station()))
                .map(found -> Objects.requireNonNullElse(found.item(), item))
                .orElse(item);
        ObjectNode use = JSON.objectNode().put("item", taken);
        label.ifPresent(text -> names.material(use, text, form.station()));
        position.ifPresent(text -> use.put("position", names.position(text, form.station())));
        return Optional.of(use);
    }
}
