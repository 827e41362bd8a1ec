package dev.sunthread.ledger.body;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.ledger.Kind;
import java.util.List;
import java.util.Objects;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.springframework.context.annotation.ClassPathScanningCandidateComponentProvider;
import org.springframework.core.GenericTypeResolver;
import org.springframework.core.type.filter.AssignableTypeFilter;
import org.springframework.util.ClassUtils;
import tools.jackson.databind.node.ObjectNode;

/** Bodies of every kind come back from their records as they were written, digit for digit. */
class BodyPropertyTests {

    /** One body of one kind. */
    record Written(Shape<?> shape, ObjectNode json) {}

    @Property(tries = 1000)
    void readingAndWritingGivesTheSameBodyAgain(@ForAll("bodiesOfEveryKind") Written written) {
        assertThat(comesBack(written.shape(), written.json())).isEqualTo(written.json());
    }

    private static <B> ObjectNode comesBack(Shape<B> shape, ObjectNode json) {
        B body = readOrSkipped(shape, json);
        ObjectNode again = shape.write(body);
        assertThat(shape.read(again, "body")).isEqualTo(body);
        return again;
    }

    /** Fields that are each right can contradict each other; such a body is no example. */
    private static <B> B readOrSkipped(Shape<B> shape, ObjectNode json) {
        try {
            return shape.read(json, "body");
        } catch (Unreadable contradiction) {
            Assume.that(false);
            throw contradiction;
        }
    }

    @Provide
    Arbitrary<Written> bodiesOfEveryKind() {
        return Arbitraries.of(bodyTypes())
                .flatMap(type -> BodyArbitraries.of(Shape.of(type)).map(json -> new Written(Shape.of(type), json)));
    }

    private static List<? extends Class<?>> bodyTypes() {
        var scanner = new ClassPathScanningCandidateComponentProvider(false);
        scanner.addIncludeFilter(new AssignableTypeFilter(Kind.class));
        return scanner.findCandidateComponents("dev.sunthread").stream()
                .map(found -> ClassUtils.resolveClassName(Objects.requireNonNull(found.getBeanClassName()), null))
                .map(kind -> GenericTypeResolver.resolveTypeArgument(kind, Kind.class))
                .filter(Objects::nonNull)
                .toList();
    }
}
