package dev.sunthread.ledger.body;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** An object with fields of its own. */
record RecordValue(Class<?> type) implements ValueShape {

    @Override
    public @Nullable Object read(JsonNode json, String path, List<FieldProblem> problems) {
        return Shape.of(type).read(json, path, problems);
    }

    @Override
    public JsonNode write(Object value) {
        return write(Shape.of(type), value);
    }

    private static <T> JsonNode write(Shape<T> shape, Object value) {
        @SuppressWarnings("unchecked")
        T held = (T) value;
        return shape.write(held);
    }

    @Override
    public String expected() {
        return "an object with the fields described below it";
    }

    @Override
    public Shape<?> shape() {
        return Shape.of(type);
    }
}
