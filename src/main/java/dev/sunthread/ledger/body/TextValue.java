package dev.sunthread.ledger.body;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** A text of a stated form. */
record TextValue(TextForm form) implements ValueShape {

    @Override
    public @Nullable Object read(JsonNode json, String path, List<FieldProblem> problems) {
        if (json.isString() && form.fits(json.stringValue())) {
            return json.stringValue();
        }
        problems.add(new FieldProblem(path, "is not " + expected(), "Give " + expected()));
        return null;
    }

    @Override
    public JsonNode write(Object value) {
        return JsonNodeFactory.instance.stringNode((String) value);
    }

    @Override
    public String expected() {
        return "text of " + form.described();
    }
}
