package dev.sunthread.ledger.body;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * The fields of a body, derived from the record that holds it: reading refuses what the record does not describe, and
 * writing gives back what was read.
 */
public final class Shape<B> {

    private static final Map<Class<?>, Shape<?>> KNOWN = new ConcurrentHashMap<>();

    private final Class<B> type;
    private final List<FieldShape> fields;
    private final Set<String> names;
    private final Constructor<B> constructor;

    private Shape(Class<B> type) {
        this.type = type;
        this.fields = Stream.of(type.getRecordComponents()).map(FieldShape::of).toList();
        this.names = new HashSet<>(fields.stream().map(FieldShape::name).toList());
        this.constructor = constructorOf(type);
    }

    private static <B> Constructor<B> constructorOf(Class<B> type) {
        Class<?>[] types = Stream.of(type.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        try {
            Constructor<B> constructor = type.getDeclaredConstructor(types);
            constructor.setAccessible(true);
            return constructor;
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The shape of a record type whose components all carry {@link Field}. */
    @SuppressWarnings("unchecked")
    public static <B> Shape<B> of(Class<B> type) {
        Shape<?> known = KNOWN.get(type);
        if (known == null) {
            known = new Shape<>(type);
            KNOWN.put(type, known);
        }
        return (Shape<B>) known;
    }

    public List<FieldShape> fields() {
        return fields;
    }

    /**
     * Reads a body.
     *
     * @throws Unreadable naming every field that is absent, unknown, of a wrong type or out of range
     */
    public B read(JsonNode json, String path) {
        List<FieldProblem> problems = new ArrayList<>();
        B body = read(json, path, problems);
        if (body == null || !problems.isEmpty()) {
            throw new Unreadable(problems);
        }
        return body;
    }

    /** Writes a body back, leaving out what is absent. */
    public ObjectNode write(B body) {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        for (FieldShape field : fields) {
            JsonNode value = field.write(body);
            if (value != null) {
                json.set(field.name(), value);
            }
        }
        return json;
    }

    @Nullable
    B read(JsonNode json, String path, List<FieldProblem> problems) {
        if (!json.isObject()) {
            problems.add(new FieldProblem(path, "is not an object", "Give an object with the fields of the reference"));
            return null;
        }
        int before = problems.size();
        refuseUnknownFields(json, path, problems);
        Object[] values = fields.stream()
                .map(field -> field.read(json.get(field.name()), path + "." + field.name(), problems))
                .toArray();
        return problems.size() == before ? construct(values, path, problems) : null;
    }

    private void refuseUnknownFields(JsonNode json, String path, List<FieldProblem> problems) {
        for (String name : json.propertyNames()) {
            if (!names.contains(name)) {
                problems.add(new FieldProblem(
                        path + "." + name, "is not a field of this kind", "Take it out or correct its name"));
            }
        }
    }

    private @Nullable B construct(@Nullable Object[] values, String path, List<FieldProblem> problems) {
        try {
            return constructor.newInstance(values);
        } catch (java.lang.reflect.InvocationTargetException e) {
            if (e.getCause() instanceof Contradiction contradiction) {
                problems.add(contradiction.at(path));
                return null;
            }
            throw new IllegalStateException(e.getCause());
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }
}
