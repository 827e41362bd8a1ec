package dev.sunthread.ledger.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.arbitraries.StringArbitrary;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Makes bodies of any shape as they are written: nothing that reading and writing would put into another form. */
final class BodyArbitraries {

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private BodyArbitraries() {}

    static Arbitrary<ObjectNode> of(Shape<?> shape) {
        List<Arbitrary<Optional<JsonNode>>> values =
                shape.fields().stream().map(BodyArbitraries::of).toList();
        return Combinators.combine(values).as(given -> {
            ObjectNode body = NODES.objectNode();
            for (int i = 0; i < given.size(); i++) {
                String name = shape.fields().get(i).name();
                given.get(i).ifPresent(value -> body.set(name, value));
            }
            return body;
        });
    }

    private static Arbitrary<Optional<JsonNode>> of(FieldShape field) {
        Arbitrary<JsonNode> value = of(field.value());
        Arbitrary<JsonNode> whole =
                field.list() ? value.list().ofMinSize(1).ofMaxSize(2).map(BodyArbitraries::array) : value;
        return whole.map(Optional::of)
                .injectNull(field.required() ? 0 : 0.4)
                .map(given -> given == null ? Optional.empty() : given);
    }

    private static JsonNode array(List<JsonNode> members) {
        ArrayNode array = NODES.arrayNode();
        members.forEach(array::add);
        return array;
    }

    private static Arbitrary<JsonNode> of(ValueShape value) {
        if (value instanceof RecordValue inside) {
            return of(Shape.of(inside.type())).map(JsonNode.class::cast);
        }
        if (value instanceof TextValue text) {
            return texts(text.form()).filter(text.form()::fits).map(NODES::stringNode);
        }
        if (value instanceof DecimalValue decimal) {
            return decimals(decimal.positive()).map(NODES::stringNode);
        }
        if (value instanceof WholeValue whole) {
            return Arbitraries.integers()
                    .greaterOrEqual(whole.positive() ? 1 : 0)
                    .map(NODES::numberNode);
        }
        if (value instanceof MomentValue) {
            return moments().map(NODES::stringNode);
        }
        if (value instanceof FlagValue) {
            return Arbitraries.of(true, false).map(NODES::booleanNode);
        }
        if (value instanceof ChoiceValue choice) {
            return Arbitraries.of(choice.type().getEnumConstants()).map(choice::write);
        }
        return texts(TextForm.CODE).map(text -> NODES.objectNode().put("lot", text));
    }

    private static Arbitrary<String> texts(TextForm form) {
        StringArbitrary any = Arbitraries.strings().alpha().numeric();
        return switch (form) {
            case ID -> any.withChars("._:-").ofMinLength(1).ofMaxLength(100);
            case CODE -> any.withChars("Äß€/#-\"\\").ofMinLength(1).ofMaxLength(64);
            case NAME -> any.withChars("Äß€/#- \"\\").ofMinLength(1).ofMaxLength(200);
            case NOTE -> any.withChars("Äß€/#- \"\\").ofMinLength(1).ofMaxLength(300);
            case SHA256 -> Arbitraries.strings().withChars("0123456789abcdef").ofLength(64);
            case BASE64 -> any.withChars("+/").ofMinLength(1).ofMaxLength(300);
            case RAW -> Arbitraries.strings().all().ofMaxLength(300);
        };
    }

    /** Decimals with all their digits, trailing zeros too. */
    private static Arbitrary<String> decimals(boolean positive) {
        Arbitrary<Long> whole = Arbitraries.longs().between(0, 999_999_999_999_999L);
        Arbitrary<String> fraction =
                Arbitraries.strings().numeric().ofMaxLength(9).map(d -> d.isEmpty() ? d : "." + d);
        Arbitrary<String> sign = Arbitraries.of(positive ? List.of("") : List.of("", "-"));
        return Combinators.combine(sign, whole, fraction)
                .as((s, w, f) -> s + w + f)
                .filter(written -> new java.math.BigDecimal(written).signum() != 0);
    }

    /** Moments to the microsecond with offsets of every quarter of an hour. */
    private static Arbitrary<String> moments() {
        Arbitrary<Integer> second = Arbitraries.integers().between(0, 59);
        Arbitrary<String> micros = Arbitraries.strings()
                .numeric()
                .ofMaxLength(6)
                .map(digits -> digits.replaceAll("0+$", ""))
                .map(digits -> digits.isEmpty() ? digits : "." + digits);
        Arbitrary<String> day = Combinators.combine(
                        Arbitraries.integers().between(2000, 2099),
                        Arbitraries.integers().between(1, 28))
                .as((year, of) -> "%d-02-%02dT23:59:".formatted(year, of));
        return Combinators.combine(day, second, micros, offsets())
                .as((date, s, fraction, offset) -> date + "%02d".formatted(s) + fraction + offset);
    }

    private static Arbitrary<String> offsets() {
        List<String> offsets = new ArrayList<>(List.of("Z", "+14:00", "-14:00"));
        Stream.of("+", "-").forEach(sign -> {
            for (int quarter = 1; quarter < 56; quarter++) {
                offsets.add("%s%02d:%02d".formatted(sign, quarter / 4, quarter % 4 * 15));
            }
        });
        return Arbitraries.of(offsets);
    }
}
