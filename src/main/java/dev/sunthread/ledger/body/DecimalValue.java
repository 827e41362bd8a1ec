package dev.sunthread.ledger.body;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** A decimal number written as a string, so that its digits are kept. */
record DecimalValue(boolean positive) implements ValueShape {

    private static final Pattern WRITTEN = Pattern.compile("-?(0|[1-9][0-9]{0,14})(\\.[0-9]{1,9})?");

    @Override
    public @Nullable Object read(JsonNode json, String path, List<FieldProblem> problems) {
        if (json.isString() && WRITTEN.matcher(json.stringValue()).matches()) {
            BigDecimal value = new BigDecimal(json.stringValue());
            if (!positive || value.signum() > 0) {
                return value;
            }
        }
        problems.add(new FieldProblem(path, "is not " + expected(), "Give " + expected() + " in quotes"));
        return null;
    }

    @Override
    public JsonNode write(Object value) {
        return JsonNodeFactory.instance.stringNode(((BigDecimal) value).toPlainString());
    }

    @Override
    public String expected() {
        String range = positive ? " greater than 0" : "";
        return "a decimal string" + range + " of at most 15 digits before and 9 after the point, such as \"12.50\"";
    }
}
