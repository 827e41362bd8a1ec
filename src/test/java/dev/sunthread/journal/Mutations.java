package dev.sunthread.journal;

import dev.sunthread.ledger.EnvelopeHead;
import dev.sunthread.ledger.body.FieldShape;
import dev.sunthread.ledger.body.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Makes one valid line wrong in every way at every field, at every depth; and lists what may be left out of it. */
final class Mutations {

    private static final String MARK = "\"@changed@\"";
    private static final int LONGEST_LIST_TRIED = 500;

    private final ObjectNode line;
    private final List<Mutation> wrong = new ArrayList<>();
    private final List<Mutation> odd = new ArrayList<>();
    private final List<Mutation> leftOut = new ArrayList<>();

    private Mutations(ObjectNode line) {
        this.line = line;
    }

    /** Changes of the fields that stand before the body. */
    static Mutations ofHead(String line) {
        ObjectNode whole = EveryKind.parsed(line);
        return of(whole, whole, Shape.of(EnvelopeHead.class), "envelope");
    }

    static Mutations ofBody(String line, Shape<?> shape) {
        ObjectNode whole = EveryKind.parsed(line);
        return of(whole, (ObjectNode) whole.get("body"), shape, "body");
    }

    /** Changes of the body that a correction's body holds. */
    static Mutations ofBodyInside(String line, Shape<?> shape) {
        ObjectNode whole = EveryKind.parsed(line);
        return of(whole, (ObjectNode) whole.get("body").get("body"), shape, "body.body");
    }

    private static Mutations of(ObjectNode line, ObjectNode object, Shape<?> shape, String path) {
        Mutations mutations = new Mutations(line);
        mutations.object(object, shape, path);
        return mutations;
    }

    List<Mutation> wrong() {
        return wrong;
    }

    /** The line with values that are well formed and perhaps make no sense. */
    List<Mutation> odd() {
        return odd;
    }

    /** The line without one optional field, for each. */
    List<Mutation> leftOut() {
        return leftOut;
    }

    private void object(ObjectNode object, Shape<?> shape, String path) {
        unknownField(object, path);
        for (FieldShape field : shape.fields()) {
            String at = path + "." + field.name();
            absent(object, field, at);
            if (object.has(field.name())) {
                twice(object, field.name(), at);
                values(object, field, at);
                inside(object.get(field.name()), field, at);
            }
        }
    }

    private void unknownField(ObjectNode object, String path) {
        object.put("colour", "red");
        add(wrong, "unknown field", path + ".colour", line.toString());
        object.remove("colour");
    }

    private void absent(ObjectNode object, FieldShape field, String at) {
        JsonNode value = object.remove(field.name());
        if (value != null) {
            add(field.required() ? wrong : leftOut, "absent", at, line.toString());
            object.set(field.name(), value);
        }
    }

    private void twice(ObjectNode object, String name, String at) {
        object.put("@changed@", 1);
        add(wrong, "twice", at, line.toString().replace(MARK, "\"" + name + "\""));
        object.remove("@changed@");
    }

    private void values(ObjectNode object, FieldShape field, String at) {
        if (field.list()) {
            lists(object, field, at);
            return;
        }
        WrongValues.of(field)
                .forEach((what, value) -> replaced(object, field.name(), value, text -> add(wrong, what, at, text)));
        OddValues.of(field).forEach(value -> replaced(object, field.name(), value, text -> add(odd, value, at, text)));
    }

    private void lists(ObjectNode object, FieldShape field, String at) {
        ArrayNode members = (ArrayNode) object.get(field.name());
        for (String value : List.of("null", "{}", "\"x\"", "7")) {
            replaced(object, field.name(), value, text -> add(wrong, "no list: " + value, at, text));
        }
        if (field.required()) {
            replaced(object, field.name(), "[]", text -> add(wrong, "empty list", at, text));
        }
        if (field.described().atMost() <= LONGEST_LIST_TRIED) {
            ArrayNode many = JsonNodeFactory.instance.arrayNode();
            for (int i = 0; i <= field.described().atMost(); i++) {
                many.add(members.get(0));
            }
            replaced(object, field.name(), many.toString(), text -> add(wrong, "too many", at, text));
        }
        WrongValues.of(field)
                .forEach((what, value) -> replaced(
                        object,
                        field.name(),
                        "[" + value + "]",
                        text -> add(wrong, what + " in list", at + "[0]", text)));
    }

    private void replaced(ObjectNode object, String name, String value, Consumer<String> each) {
        JsonNode before = object.get(name);
        object.put(name, "@changed@");
        each.accept(line.toString().replace(MARK, value));
        object.set(name, before);
    }

    private void inside(JsonNode value, FieldShape field, String at) {
        Shape<?> shape = field.value().shape();
        if (shape != null) {
            JsonNode first = field.list() ? value.get(0) : value;
            object((ObjectNode) first, shape, field.list() ? at + "[0]" : at);
        }
    }

    private static void add(List<Mutation> mutations, String what, String field, String line) {
        mutations.add(new Mutation(what, field, line));
    }
}
