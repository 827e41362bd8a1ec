package dev.sunthread.scan.parse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNoException;

import dev.sunthread.kernel.SerialPattern;
import dev.sunthread.scan.meaning.Scanned;
import java.time.Duration;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Assertions;

/** Whatever is scanned, it is read: without an exception, in little time, and nothing of it gets lost. */
class ScanParserPropertyTests {

    private static final ScanParser PARSER =
            new ScanParser(List.of(new ItemPattern("RCV-100", new SerialPattern("RC-#####"))), 2026);

    @Property(tries = 2000)
    void readsAnyText(@ForAll String text) {
        isRead(text);
    }

    @Property(tries = 6000)
    void readsAnythingThatLooksLikeALabel(@ForAll("pieces") List<String> pieces) {
        isRead(String.join("", pieces));
    }

    @Example
    void saysOfAFrameWithNothingInItThatItIsEmpty() {
        isRead("[)>\u001e06\u001d");
    }

    @Property(tries = 300)
    void readsLongTextsInLittleTime(@ForAll("pieces") List<String> pieces) {
        String text = String.join("", pieces).repeat(200);
        Assertions.assertTimeout(Duration.ofSeconds(5), () -> isRead(text));
    }

    private static void isRead(String text) {
        Scanned scanned = PARSER.read(text);
        assertThat(scanned.readings()).isNotEmpty();
        assertThat(scanned.readings())
                .allSatisfy(reading -> assertThat(reading.isWhole()
                                || !reading.remarks().isEmpty()
                                || !reading.unread().isEmpty())
                        .isTrue());
        assertThatNoException().isThrownBy(() -> PARSER.read(Separators.toPictures(text)));
    }

    @Provide
    Arbitrary<List<String>> pieces() {
        return Arbitraries.of(
                        "[)>",
                        "\u001e",
                        "\u001d",
                        "\u0004",
                        "06",
                        "05",
                        "12",
                        "^]",
                        "<GS>",
                        "]d2",
                        "]C1",
                        "]E0",
                        "01",
                        "12345678901231",
                        "10",
                        "21",
                        "17",
                        "261107",
                        "(",
                        ")",
                        "1P",
                        "P",
                        "Q5",
                        "1TLOT",
                        "S",
                        "14D",
                        "20261107",
                        "https://",
                        "example.com/",
                        "/",
                        "?",
                        "&",
                        "=",
                        "%2F",
                        "%",
                        "urn:epc:id:sgtin:",
                        "4012345.",
                        ".",
                        "^",
                        "RC-00001",
                        "0",
                        "O",
                        " ",
                        "\u00fc",
                        "\ud83d\ude00",
                        "\ud83d",
                        "\u0000",
                        "\r\n",
                        "8013",
                        "310n",
                        "3103",
                        "\u241d",
                        "{",
                        "\\x1d")
                .list()
                .ofMinSize(1)
                .ofMaxSize(20);
    }
}
