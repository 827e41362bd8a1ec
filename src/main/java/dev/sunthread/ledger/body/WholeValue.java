package dev.sunthread.ledger.body;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** A whole number that fits 32 bits. */
record WholeValue(boolean positive) implements ValueShape {

    @Override
    public @Nullable Object read(JsonNode json, String path, List<FieldProblem> problems) {
        if (json.isIntegralNumber() && json.canConvertToInt() && (!positive || json.intValue() > 0)) {
            return json.intValue();
        }
        problems.add(new FieldProblem(path, "is not " + expected(), "Give " + expected() + " without quotes"));
        return null;
    }

    @Override
    public JsonNode write(Object value) {
        return JsonNodeFactory.instance.numberNode((Integer) value);
    }

    @Override
    public String expected() {
        return positive ? "a whole number from 1 to 2147483647" : "a whole number of at most 10 digits";
    }
}
