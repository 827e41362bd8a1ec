package dev.sunthread.scan.gs1;

import dev.sunthread.scan.meaning.Why;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One part of an application identifier's value: its characters, its length and its checks. */
record Component(CharacterSet characters, int shortest, int longest, boolean optional, List<String> checks) {

    private static final Pattern WRITTEN = Pattern.compile("(\\[?)([NXYZ])(\\.\\.)?(\\d+)]?((?:,\\w+)*)");

    /** The component that the dictionary writes so; empty if it is no component. */
    static Optional<Component> of(String written) {
        Matcher parts = WRITTEN.matcher(written);
        if (!parts.matches()) {
            return Optional.empty();
        }
        int longest = Integer.parseInt(parts.group(4));
        String checks = parts.group(5);
        return Optional.of(new Component(
                CharacterSet.valueOf(parts.group(2)),
                parts.group(3) == null ? longest : 1,
                longest,
                !parts.group(1).isEmpty(),
                checks.isEmpty() ? List.of() : List.of(checks.substring(1).split(","))));
    }

    /** What is wrong with the text as this component. */
    Optional<Why> problem(String text) {
        if (text.length() < shortest || text.length() > longest) {
            return Optional.of(Why.WRONG_LENGTH);
        }
        if (!characters.holds(text)) {
            return Optional.of(Why.WRONG_CHARACTER);
        }
        return checks.stream()
                .flatMap(check -> Check.problem(check, text).stream())
                .findFirst();
    }
}
