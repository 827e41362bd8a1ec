package dev.sunthread.ledger.body;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** One word of a fixed list, written in lower case with hyphens. */
record ChoiceValue(Class<?> type) implements ValueShape {

    @Override
    public @Nullable Object read(JsonNode json, String path, List<FieldProblem> problems) {
        for (Object choice : type.getEnumConstants()) {
            if (json.isString() && word(choice).equals(json.stringValue())) {
                return choice;
            }
        }
        problems.add(new FieldProblem(path, "is not " + expected(), "Give " + expected()));
        return null;
    }

    @Override
    public JsonNode write(Object value) {
        return JsonNodeFactory.instance.stringNode(word(value));
    }

    @Override
    public String expected() {
        return Stream.of(type.getEnumConstants())
                .map(choice -> "\"" + word(choice) + "\"")
                .collect(Collectors.joining(", ", "one of ", ""));
    }

    private static String word(Object choice) {
        return ((Enum<?>) choice).name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
