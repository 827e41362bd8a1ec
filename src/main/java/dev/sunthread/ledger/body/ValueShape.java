package dev.sunthread.ledger.body;

import java.math.BigDecimal;
import java.time.OffsetDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** How one value stands in a line: read from it with every problem named, and written back to it. */
public interface ValueShape {

    /** Reads the value, or adds what is wrong with it and gives nothing. */
    @Nullable
    Object read(JsonNode json, String path, List<FieldProblem> problems);

    JsonNode write(Object value);

    /** What is expected, in words that follow "Give". */
    String expected();

    /** The record this value is written from, if it is an object with fields of its own. */
    default @Nullable Shape<?> shape() {
        return null;
    }

    static ValueShape of(Class<?> type, Field described) {
        if (type == String.class) {
            return new TextValue(described.text());
        }
        if (type == BigDecimal.class) {
            return new DecimalValue(described.positive());
        }
        if (type == Integer.class || type == int.class) {
            return new WholeValue(described.positive());
        }
        if (type == Boolean.class || type == boolean.class) {
            return new FlagValue();
        }
        if (type == OffsetDateTime.class) {
            return new MomentValue();
        }
        if (type == ObjectNode.class) {
            return new ObjectValue();
        }
        if (type.isEnum()) {
            return new ChoiceValue(type);
        }
        return new RecordValue(type);
    }
}
