package dev.sunthread.journal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.zip.GZIPOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a file is, is told by its bytes: the beginnings of file formats are those of their published specifications. */
class SentFileTests {

    @ParameterizedTest
    @CsvSource({
        "89504E470D0A1A0A0000000D49484452, a picture",
        "FFD8FFE000104A464946, a picture",
        "474946383961, a picture",
        "255044462D312E37, a document",
        "504B030414000000, a packed folder",
        "FD377A585A00, packed in a way that is not unpacked here",
        "FFFE7B002200, text in UTF-16 or UTF-32",
        "7F454C4602010100, bytes that are no text",
        "00007B2269, bytes that are no text"
    })
    void refusesWhatPlainlyIsNoText(String hex, String what) {
        byte[] bytes = java.util.HexFormat.of().parseHex(hex);
        NoText refused = catchThrowableOfType(NoText.class, () -> SentFile.text(bytes));
        assertThat(refused.reason()).isEqualTo("The file is " + what + ", not a text of lines");
        assertThat(refused.remedy()).isNotBlank();
    }

    @Test
    void givesTextAsItIs() throws IOException {
        for (String text : new String[] {"", "{\"journal\":1}\n", "\uFEFF {\"id\":\"\u0000\"}", "hello", "a;b\n1;2"}) {
            byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
            assertThat(SentFile.text(bytes)).isEqualTo(bytes);
        }
    }

    @Test
    void unpacksEveryMemberHoweverSlowlyTheyCome() throws IOException {
        ByteArrayOutputStream members = new ByteArrayOutputStream();
        members.writeBytes(packed("one\n"));
        members.writeBytes(packed("two\n"));
        assertThat(SentFile.text(slow(members.toByteArray())).readAllBytes())
                .asString()
                .isEqualTo("one\ntwo\n");
    }

    @Test
    void saysWhereAPackedFileIsCut() throws IOException {
        byte[] whole = packed("line\n".repeat(20_000));
        byte[] cut = Arrays.copyOf(whole, whole.length / 2);
        assertThatThrownBy(() -> SentFile.text(new ByteArrayInputStream(cut)).readAllBytes())
                .isInstanceOf(CutFile.class);
        InputStream text = SentFile.text(new ByteArrayInputStream(packed("short"), 0, 22));
        assertThat(text.readNBytes(5)).asString().isEqualTo("short");
        assertThatThrownBy(text::read).isInstanceOf(CutFile.class);
        assertThatThrownBy(() -> SentFile.text(new ByteArrayInputStream(cut, 0, 5)))
                .isInstanceOf(NoText.class)
                .hasMessage("The packed file is cut or damaged, and nothing of it was taken");
    }

    @Test
    void refusesWhatIsPackedTwice() throws IOException {
        ByteArrayOutputStream twice = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(twice)) {
            out.write(packed("{}"));
        }
        assertThatThrownBy(() -> SentFile.text(twice.toByteArray()))
                .hasMessage("The file is packed twice, not a text of lines");
    }

    static byte[] packed(String text) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream out = new GZIPOutputStream(packed)) {
            out.write(text.getBytes(StandardCharsets.UTF_8));
        }
        return packed.toByteArray();
    }

    /** Bytes that come one at a time, and of which nobody knows beforehand whether there are more. */
    private static InputStream slow(byte[] bytes) {
        return new FilterInputStream(new ByteArrayInputStream(bytes)) {
            @Override
            public int read(byte[] into, int from, int count) throws IOException {
                return super.read(into, from, Math.min(count, 1));
            }

            @Override
            public int available() {
                return 0;
            }
        };
    }
}
