package dev.sunthread.ledger.body;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** True or false. */
record FlagValue() implements ValueShape {

    @Override
    public @Nullable Object read(JsonNode json, String path, List<FieldProblem> problems) {
        if (json.isBoolean()) {
            return json.booleanValue();
        }
        problems.add(new FieldProblem(path, "is not " + expected(), "Give " + expected() + " without quotes"));
        return null;
    }

    @Override
    public JsonNode write(Object value) {
        return JsonNodeFactory.instance.booleanNode((Boolean) value);
    }

    @Override
    public String expected() {
        return "true or false";
    }
}
