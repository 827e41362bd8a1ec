package dev.sunthread.journal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class LineSplitterTests {

    @Test
    void splitsAtLineFeedsWithOrWithoutCarriageReturn() throws IOException {
        assertThat(texts("a\nb\r\n\nc")).containsExactly("a", "b", "", "c");
        assertThat(texts("a\rb\r\r\n")).containsExactly("a\rb\r");
        assertThat(texts("")).isEmpty();
        assertThat(texts("\n")).containsExactly("");
    }

    @Test
    void passesOverAByteOrderMarkBeforeTheFirstLineOnly() throws IOException {
        assertThat(texts("\uFEFF")).isEmpty();
        assertThat(texts("\uFEFFa\n\uFEFFb")).containsExactly("a", "\uFEFFb");
    }

    @Test
    void keepsACarriageReturnThatIsNotTheEndWhereverTheBufferEnds() throws IOException {
        for (int length = 65_533; length < 65_540; length++) {
            String line = "x".repeat(length) + "\r";
            assertThat(texts(line + "\n" + line + "y\n")).containsExactly("x".repeat(length), line + "y");
        }
    }

    @Test
    void readsALineOfTheLongestLengthWhole() throws IOException {
        RawLine longest = lines(Bytes.repeated('x', RawLine.LONGEST)).get(0);
        assertThat(longest.isCut()).isFalse();
        assertThat(longest.kept()).hasSize(RawLine.LONGEST);
    }

    // SHA-256 of 100,000,000 times "a", by sha256sum
    @Test
    void keepsTheBeginningOfALongerLineAndHashesAllOfIt() throws IOException {
        List<RawLine> lines = lines(new SequenceInputStream(
                Bytes.repeated('a', 100_000_000),
                new ByteArrayInputStream("\r\nnext".getBytes(StandardCharsets.UTF_8))));
        assertThat(lines).extracting(RawLine::length).containsExactly(100_000_000L, 4L);
        assertThat(lines.get(0).isCut()).isTrue();
        assertThat(lines.get(0).kept()).hasSize(65_536);
        assertThat(lines.get(0).sha256()).isEqualTo("83d30385a4a11980275dc23de3fb49ff37b906cc841efa048a96c62d90ff3b5f");
    }

    private static List<String> texts(String file) throws IOException {
        return lines(new ByteArrayInputStream(file.getBytes(StandardCharsets.UTF_8))).stream()
                .map(RawLine::shown)
                .toList();
    }

    private static List<RawLine> lines(InputStream in) throws IOException {
        LineSplitter splitter = new LineSplitter(in);
        List<RawLine> lines = new ArrayList<>();
        for (RawLine line = splitter.next(); line != null; line = splitter.next()) {
            lines.add(line);
        }
        return Collections.unmodifiableList(lines);
    }
}
