package dev.sunthread.ledger.body;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** One field of a body: its name, whether it must be there, whether it repeats, and the value it takes. */
public record FieldShape(
        String name, boolean required, boolean list, ValueShape value, Field described, RecordComponent component) {

    static FieldShape of(RecordComponent component) {
        Field described = component.getAnnotation(Field.class);
        if (described == null) {
            throw new IllegalStateException(component + " has no @Field");
        }
        boolean list = List.class.isAssignableFrom(component.getType());
        Type type = list
                ? ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0]
                : component.getType();
        boolean required =
                list ? described.atLeast() > 0 : !component.getAnnotatedType().isAnnotationPresent(Nullable.class);
        component.getAccessor().setAccessible(true);
        return new FieldShape(
                component.getName(), required, list, ValueShape.of((Class<?>) type, described), described, component);
    }

    @Nullable
    Object read(@Nullable JsonNode json, String path, List<FieldProblem> problems) {
        if (json == null) {
            if (required) {
                problems.add(new FieldProblem(path, "is missing", "Give " + expected()));
            }
            return list ? List.of() : null;
        }
        return list ? readList(json, path, problems) : value.read(json, path, problems);
    }

    /** What the field expects, in words. */
    public String expected() {
        return list
                ? "a list of %d to %d: ".formatted(described.atLeast(), described.atMost()) + value.expected()
                : value.expected();
    }

    private List<Object> readList(JsonNode json, String path, List<FieldProblem> problems) {
        List<Object> members = new ArrayList<>();
        if (!json.isArray() || json.size() < described.atLeast() || json.size() > described.atMost()) {
            problems.add(new FieldProblem(path, "is not " + expected(), "Give " + expected()));
            return members;
        }
        for (int i = 0; i < json.size(); i++) {
            Object member = value.read(json.get(i), path + "[" + i + "]", problems);
            if (member != null) {
                members.add(member);
            }
        }
        return List.copyOf(members);
    }

    @Nullable
    JsonNode write(Object body) {
        Object held = held(body);
        if (held == null) {
            return null;
        }
        if (!list) {
            return value.write(held);
        }
        ArrayNode members = JsonNodeFactory.instance.arrayNode();
        ((List<?>) held).forEach(member -> members.add(value.write(member)));
        return members.isEmpty() ? null : members;
    }

    private @Nullable Object held(Object body) {
        try {
            return component.getAccessor().invoke(body);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
