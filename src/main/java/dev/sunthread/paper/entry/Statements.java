package dev.sunthread.paper.entry;

import dev.sunthread.paper.form.Box;
import dev.sunthread.paper.form.Box.Holds;
import dev.sunthread.paper.form.Form;
import dev.sunthread.station.label.Label;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.springframework.stereotype.Component;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Says what a record tells, as happenings by the fields of the journal; whether they can be understood is for the door. */
@Component
class Statements {

    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final DateTimeFormatter STAMP = DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss");

    private final OperationStatements operations;
    private final WrittenNames names;

    Statements(OperationStatements operations, WrittenNames names) {
        this.operations = operations;
        this.names = names;
    }

    /** What it tells; of an operation also that it made its unit, if that is new or {@code madeBefore} says so. */
    List<Statement> of(Form form, Filled filled, boolean madeBefore) {
        return switch (form.kind()) {
            case OPERATION -> operations.of(form, filled, madeBefore);
            case CHARGE -> one("charge", filled, material(form, filled));
            // of what was taken off the lot is told, not the container
            case DISCHARGE -> one("discharge", filled, material(form, filled).without("container"));
            case CLEAN_POINT ->
                one("clean-point", filled, put(atPosition(form, filled), "evidence", filled.in("evidence")));
            case CARRIER_LOAD -> one("carrier-load", filled, carrierLoad(form, filled));
            case RUN -> one("cure-run", filled, run(form, filled));
            case SHIPMENT -> one("shipment", filled, shipment(form, filled));
        };
    }

    private static List<Statement> one(String kind, Filled filled, ObjectNode body) {
        return List.of(new Statement(kind, filled.endedAt(), body));
    }

    private static ObjectNode put(ObjectNode body, String field, Optional<String> text) {
        text.ifPresent(said -> body.put(field, said));
        return body;
    }

    private ObjectNode atPosition(Form form, Filled filled) {
        ObjectNode body = JSON.objectNode().put("station", form.station());
        return put(body, "position", filled.in("position").map(text -> names.position(text, form.station())));
    }

    private ObjectNode material(Form form, Filled filled) {
        ObjectNode body = atPosition(form, filled);
        filled.in("material").ifPresent(text -> names.material(body, text, form.station()));
        return body;
    }

    private ObjectNode carrierLoad(Form form, Filled filled) {
        ObjectNode body = JSON.objectNode().put("station", form.station());
        put(body, "carrier", carrier(form, filled.in("carrier")));
        ArrayNode loads = body.putArray("loads");
        for (Box box : form.boxes()) {
            if (box.holds() == Holds.LOAD && filled.in(box.name()).isPresent()) {
                ObjectNode load = loads.addObject();
                String text = filled.in(box.name()).orElseThrow();
                names.one(text, form.station(), Label.OfCarrier.class)
                        .ifPresentOrElse(
                                inner -> load.put("carrier", inner.code()),
                                () -> load.set("unit", names.unitBody(text, form.station(), null)));
                put(load, "position", filled.in(box.name().replace("load", "place")));
            }
        }
        return body;
    }

    private Optional<String> carrier(Form form, Optional<String> text) {
        return text.map(written -> names.carrier(written, form.station()));
    }

    private ObjectNode run(Form form, Filled filled) {
        Optional<String> equipment = filled.in("equipment")
                .map(text -> names.one(text, form.station(), Label.OfEquipment.class)
                        .map(Label.OfEquipment::code)
                        .orElse(text));
        ObjectNode body = JSON.objectNode()
                .put(
                        "run",
                        equipment.orElse(filled.id().text())
                                + filled.startedAt()
                                        .map(at -> "-" + STAMP.format(at))
                                        .orElse(""));
        put(body, "equipment", equipment);
        put(body, "recipe", filled.in("recipe"));
        filled.startedAt().ifPresent(at -> body.put("startedAt", EntryTimes.written(at)));
        body.set("units", units(form, filled));
        ArrayNode carriers = body.putArray("carriers");
        written(form, filled, "carrier.")
                .forEach(text -> carriers.addObject().put("carrier", names.carrier(text, form.station())));
        return body;
    }

    private ObjectNode shipment(Form form, Filled filled) {
        ObjectNode body = JSON.objectNode()
                .put(
                        "shipment",
                        filled.in("shipment").orElse("SH-" + filled.id().text()));
        put(body, "consignee", filled.in("consignee"));
        body.set("units", units(form, filled));
        return body;
    }

    private ArrayNode units(Form form, Filled filled) {
        ArrayNode units = JSON.arrayNode();
        written(form, filled, "unit.").forEach(text -> units.add(names.unitBody(text, form.station(), null)));
        return units;
    }

    private static Stream<String> written(Form form, Filled filled, String boxes) {
        return form.boxes().stream()
                .filter(box -> box.name().startsWith(boxes))
                .flatMap(box -> filled.in(box.name()).stream());
    }
}
