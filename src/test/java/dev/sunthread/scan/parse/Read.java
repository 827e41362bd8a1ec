package dev.sunthread.scan.parse;

import dev.sunthread.kernel.SerialPattern;
import dev.sunthread.scan.meaning.Amount;
import dev.sunthread.scan.meaning.Element;
import dev.sunthread.scan.meaning.Meaning;
import dev.sunthread.scan.meaning.Reading;
import dev.sunthread.scan.meaning.Scanned;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;

/** Reads texts in tests, in which {@code <GS>}, {@code <RS>} and {@code <EOT>} stand for the characters themselves. */
final class Read {

    private static final ScanParser PARSER =
            new ScanParser(List.of(new ItemPattern("RCV-100", new SerialPattern("RC-#####"))), 2026);

    private Read() {}

    static Scanned scanned(String text) {
        return PARSER.read(exact(text));
    }

    static String exact(String text) {
        return text.replace("<GS>", "\u001d").replace("<RS>", "\u001e").replace("<EOT>", "\u0004");
    }

    /** The only reading, which must be sure. */
    static Reading sure(String text) {
        return scanned(text).sure().orElseThrow(() -> new AssertionError(text + " is read as " + scanned(text)));
    }

    /** The first reading as {@code identifier=value} pairs. */
    static String first(String text) {
        return pairs(scanned(text).readings().get(0).elements());
    }

    /** The first quantity that a label says. */
    static Amount amount(Reading label) {
        return Objects.requireNonNull(label.all(Meaning.QUANTITY).get(0).amount());
    }

    static String pairs(List<Element> elements) {
        return elements.stream()
                .map(element -> element.identifier() + "=" + element.value())
                .collect(Collectors.joining(" "));
    }
}
