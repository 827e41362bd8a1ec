package dev.sunthread;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.holds.SoftRule;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The document of rules names every rule of the code and no other, and says of each whether it may be passed. */
class InterlocksDocumentTests {

    private static final Path DOCUMENT = Path.of("src", "docs", "interlocks.md");
    private static final Path SOURCES = Path.of("src", "main", "java");

    /** From a call that breaks or shows a rule to the first text with a space, which is its sentence. */
    private static final Pattern CALL = Pattern.compile("\\b(?:breaks|shows)\\((?:[^\"]|\"[^\" ]*\")*?\"[^\"]* ");

    private static final Pattern NAME = Pattern.compile("\"([a-z]+(?:-[a-z]+){2,})\"");
    private static final Pattern ROW = Pattern.compile("^\\| `([a-z-]+)` \\| (hard|soft|noted) \\|", Pattern.MULTILINE);

    @Test
    void namesEveryRuleOfTheCodeAndNoOther() throws IOException {
        Set<String> rules = new TreeSet<>(
                Arrays.stream(SoftRule.values()).map(SoftRule::word).toList());
        for (String source : sources()) {
            Matcher calls = CALL.matcher(source);
            while (calls.find()) {
                NAME.matcher(calls.group()).results().forEach(name -> rules.add(name.group(1)));
            }
        }
        assertThat(rules).hasSizeGreaterThan(50);
        assertThat(documented().keySet()).containsExactlyElementsOf(rules);
    }

    @Test
    void saysOfEachWhetherItMayBePassed() throws IOException {
        Set<String> soft = documented().entrySet().stream()
                .filter(rule -> rule.getValue().equals("soft"))
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
        assertThat(soft)
                .containsExactlyInAnyOrderElementsOf(
                        Arrays.stream(SoftRule.values()).map(SoftRule::word).toList());
    }

    private static Map<String, String> documented() throws IOException {
        Map<String, String> rules = new TreeMap<>();
        ROW.matcher(Files.readString(DOCUMENT))
                .results()
                .forEach(row -> assertThat(rules.put(row.group(1), row.group(2)))
                        .as("%s stands twice", row.group(1))
                        .isNull());
        return rules;
    }

    private static List<String> sources() throws IOException {
        try (Stream<Path> files = Files.walk(SOURCES)) {
            List<Path> java =
                    files.filter(file -> file.toString().endsWith(".java")).toList();
            List<String> sources = new java.util.ArrayList<>();
            for (Path file : java) {
                sources.add(Files.readString(file));
            }
            return sources;
        }
    }
}
