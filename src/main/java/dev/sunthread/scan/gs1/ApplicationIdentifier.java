package dev.sunthread.scan.gs1;

import dev.sunthread.scan.meaning.Why;
import java.util.List;
import java.util.Optional;

/**
 * A GS1 application identifier as the dictionary describes it.
 *
 * @param predefined whether its length is known from its first digits, so that no separator follows it
 * @param inLink whether it may stand in the query of a Digital Link
 * @param qualifiers if it may be the key of a Digital Link, the alternatives of what may follow it in the path; absent
 *     if it is no key
 */
record ApplicationIdentifier(
        String code,
        boolean predefined,
        boolean inLink,
        List<Component> components,
        Optional<List<List<String>>> qualifiers) {

    /** The length of the value, for predefined ones. */
    int length() {
        return components.stream().mapToInt(Component::longest).sum();
    }

    /** What is wrong with a value of it. */
    Optional<Why> problem(String value) {
        if (value.isEmpty()) {
            return Optional.of(Why.EMPTY_VALUE);
        }
        int from = 0;
        for (Component component : components) {
            if (from == value.length() && component.optional()) {
                return Optional.empty();
            }
            int to = Math.min(value.length(), from + component.longest());
            Optional<Why> problem = component.problem(value.substring(from, to));
            if (problem.isPresent()) {
                return problem;
            }
            from = to;
        }
        return from == value.length() ? Optional.empty() : Optional.of(Why.WRONG_LENGTH);
    }
}
