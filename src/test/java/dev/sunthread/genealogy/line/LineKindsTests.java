package dev.sunthread.genealogy.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The fields by which a kind is told that can't be read are those of the reference, which is held to what the kinds take. */
class LineKindsTests {

    private static final Path REFERENCE = Path.of("src", "docs", "journal.md");
    private static final Pattern ROW = Pattern.compile("(?m)^\\| `([^`]+)` \\|");

    @Test
    void everyKindHasTheFieldsOfTheReference() throws IOException {
        Map<String, Set<String>> reference = new HashMap<>();
        for (String part : Files.readString(REFERENCE).split("(?m)^### ")) {
            reference.put(part.lines().findFirst().orElse(""), leaves(part));
        }
        LineKinds.FIELDS.forEach(
                (kind, fields) -> assertThat(new TreeSet<>(fields)).as(kind).isEqualTo(reference.get(kind)));
    }

    private static Set<String> leaves(String part) {
        List<String> fields = ROW.matcher(part)
                .results()
                .map(row -> row.group(1).replace("[]", ""))
                .toList();
        return fields.stream()
                .filter(field -> fields.stream().noneMatch(other -> other.startsWith(field + ".")))
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
