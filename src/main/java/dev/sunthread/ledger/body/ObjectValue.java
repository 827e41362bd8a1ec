package dev.sunthread.ledger.body;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** An object whose fields another kind describes. */
record ObjectValue() implements ValueShape {

    @Override
    public @Nullable Object read(JsonNode json, String path, List<FieldProblem> problems) {
        if (json.isObject()) {
            return json;
        }
        problems.add(new FieldProblem(path, "is not an object", "Give " + expected()));
        return null;
    }

    @Override
    public JsonNode write(Object value) {
        return (JsonNode) value;
    }

    @Override
    public String expected() {
        return "an object with the fields of the kind it is for";
    }
}
