package dev.sunthread.genealogy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * Whatever an answer reads without the condition of its cut-off is listed with the reason why nothing that is recorded
 * later changes it: {@code Class.STATEMENT | tables | reason}.
 */
class ReadWithoutCutOffTests {

    private static final String LIST = "/genealogy/read-without-cut-off.txt";

    @Test
    void isListedWithItsReason() throws IOException {
        Map<String, String> listed = new TreeMap<>();
        for (String line : text().lines().toList()) {
            String[] parts = line.split(" \\| ");
            assertThat(parts).as(line).hasSize(3).doesNotContain("");
            listed.put(parts[0], parts[1]);
        }
        assertThat(ReadWithoutCutOff.found())
                .as("apply Known.at or Known.named to what is new, or list it with its reason in " + LIST)
                .isEqualTo(listed);
    }

    private static String text() throws IOException {
        try (InputStream file = Objects.requireNonNull(ReadWithoutCutOffTests.class.getResourceAsStream(LIST))) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
