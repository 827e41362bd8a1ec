package dev.sunthread;

import static org.assertj.core.api.Assertions.assertThat;

import dev.sunthread.holds.SoftRule;
import dev.sunthread.testing.RulesOfCode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The document of rules names every rule of the code and no other, and says of each whether it may be passed. */
class InterlocksDocumentTests {

    private static final Path DOCUMENT = Path.of("src", "docs", "interlocks.md");
    private static final Pattern ROW = Pattern.compile("^\\| `([a-z-]+)` \\| (hard|soft|noted) \\|", Pattern.MULTILINE);

    @Test
    void namesEveryRuleOfTheCodeAndNoOther() throws IOException {
        Set<String> rules = RulesOfCode.names();
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
}
